package sagwright.job;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import sagwright.check.FrameCompliance;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;

/**
 * Finds what the frame gives, from a run on a bar of known modulus (docs/contract.md, section 9).
 */
public final class CalibrateFrame {
  private final SheetReader reader;
  private final Evaluator evaluator;
  private final Clock clock;

  public CalibrateFrame(SpeciesTable species, Clock clock) {
    this.reader = new SheetReader(species);
    this.evaluator = new Evaluator(species);
    this.clock = clock;
  }

  /** The bar's sheet, which has a run and no splice. */
  public Sheet read(Path sheet) throws BadDocumentException {
    Sheet bar = reader.readFile(sheet).requireRun();
    if (bar.shaft().splice() != null) {
      throw new BadDocumentException("shaft.splice", "a bar is of one material");
    }
    return bar;
  }

  /**
   * @param modulusMPa known, above 0, with its standard uncertainty
   */
  public FrameCompliance work(Sheet bar, Estimate modulusMPa) throws PoorRunException {
    return FrameCompliance.of(bar.bendTest(), modulusMPa, evaluator);
  }

  /**
   * Puts it into a calibration file and keeps the rest of it; begins one where there is none.
   *
   * @throws PoorRunException where the compliance lies below 0: no frame is like that
   */
  public void writeInto(Path calibration, FrameCompliance frame)
      throws BadDocumentException, IOException, PoorRunException {
    if (frame.complianceMmPerN().value() < 0) {
      throw new PoorRunException(
          "the bar gave less than its modulus says: a frame compliance below 0 is not written");
    }
    new CalibrationFile(calibration).put(clock, edit -> edit.withFrame(frame.complianceMmPerN()));
  }
}
