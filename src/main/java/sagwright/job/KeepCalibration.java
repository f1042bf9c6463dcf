package sagwright.job;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sagwright.bench.LoadCalibration;
import sagwright.check.CalibrationPoint;
import sagwright.check.CalibrationPoint.Direction;
import sagwright.check.ForceClass;
import sagwright.check.FrameCompliance;
import sagwright.check.GaugeSpring;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationEdit;
import sagwright.sheet.CalibrationReader;
import sagwright.sheet.DocumentText;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Keeps calibrations in a workshop. Each part that was made joins what is in force; what stands
 * behind it (points, gravity, who and when) goes with it. The whole holds as long as the older of
 * load and gauge does.
 */
public final class KeepCalibration {
  private final Workshop workshop;
  private final CalibrationInForce inForce;
  private final InstantSource clock;
  private final GradeAgain gradeAgain;

  /**
   * @param gradeAgain for what was graded by runs of another calibration
   */
  public KeepCalibration(
      Workshop workshop, CalibrationInForce inForce, InstantSource clock, GradeAgain gradeAgain) {
    this.workshop = workshop;
    this.gradeAgain = gradeAgain;
    this.inForce = inForce;
    this.clock = clock;
  }

  /** The load by known masses. */
  public void load(
      LineCalibration line, GuidedPoints masses, LocalGravity gravity, Signature signature)
      throws WorkshopException {
    JsonLine behind =
        behind("massG", "counts", masses, line).put("gravityMS2", gravity.metresPerSecondSquared());
    keep(
        edit ->
            edit.withLoad(
                new LoadCalibration(
                    line.slope(),
                    line.scaleUncertaintyPercent(),
                    line.residualStd(),
                    line.greatestPoint())),
        new Behind(CalibrationPart.LOAD, behind),
        signature);
  }

  /** The gauge by blocks. */
  public void gauge(LineCalibration line, GuidedPoints blocks, Signature signature)
      throws WorkshopException {
    keep(
        edit ->
            edit.withGauge(
                new CalibrationEdit.GaugeLine(
                    line.slope(),
                    line.scaleUncertaintyPercent(),
                    line.residualStd(),
                    line.greatestPoint())),
        new Behind(CalibrationPart.GAUGE, behind("lengthMm", "steps", blocks, line)),
        signature);
  }

  /**
   * The gauge's spring.
   *
   * @throws WorkshopException also where the gauge itself was never calibrated
   */
  public void spring(GaugeSpring spring, List<GaugeSpring.Push> pushes, Signature signature)
      throws WorkshopException {
    if (!inForce.standing().made().containsKey(CalibrationPart.GAUGE)) {
      throw new WorkshopException("calibrate the gauge by blocks first: its spring goes with it");
    }
    JsonLine behind =
        new JsonLine()
            .putNumbers("travelMm", pushes.stream().mapToDouble(p -> p.travelMm()).toArray())
            .putNumbers("balanceG", pushes.stream().mapToDouble(p -> p.balanceG()).toArray());
    keep(
        edit -> edit.withSpring(spring.springNPerMm()),
        new Behind(CalibrationPart.SPRING, behind),
        signature);
  }

  /**
   * What the frame gives.
   *
   * @param bar the tag or the file that the bar's run came from
   * @throws WorkshopException also where it lies below 0: no frame is like that
   */
  public void frame(FrameCompliance frame, String bar, Signature signature)
      throws WorkshopException {
    if (frame.complianceMmPerN().value() < 0) {
      throw new WorkshopException(
          "the bar gave less than its modulus says: a frame that gives less than nothing is not"
              + " kept");
    }
    keep(
        edit -> edit.withFrame(frame.complianceMmPerN()),
        new Behind(CalibrationPart.FRAME, new JsonLine().put("bar", bar)),
        signature);
  }

  /** A calibration file, as it stands. */
  public void bringIn(Path file) throws WorkshopException {
    try {
      String document = DocumentText.ofFile(file);
      CalibrationReader.requireComplete(CalibrationReader.read(document));
      add(document);
    } catch (BadDocumentException e) {
      throw new WorkshopException(file + ": " + e.getMessage());
    }
  }

  /** What a part was made from. */
  private record Behind(CalibrationPart part, JsonLine json) {}

  private static JsonLine behind(
      String applied, String reading, GuidedPoints points, LineCalibration line) {
    ForceClass forceClass = line.forceClass();
    List<CalibrationPoint> taken = points.taken();
    return new JsonLine()
        .putNumbers(applied, taken.stream().mapToDouble(CalibrationPoint::applied).toArray())
        .putNumbers(reading, taken.stream().mapToDouble(CalibrationPoint::reading).toArray())
        .putTexts(
            "direction",
            taken.stream().map(p -> p.direction() == Direction.UP ? "up" : "down").toList())
        .put("class", forceClass == null ? null : forceClass.number());
  }

  private void keep(UnaryOperator<CalibrationEdit> part, Behind behind, Signature signature)
      throws WorkshopException {
    signature.require();
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    CalibrationInForce.Standing standing = inForce.standing();
    try {
      CalibrationEdit edit =
          standing.isThere() ? CalibrationEdit.of(standing.document()) : CalibrationEdit.begin(now);
      JsonLine whole =
          JsonLine.parse(part.apply(edit).text())
              .put("made", oldest(standing, behind.part(), now).toString())
              .put("validDays", signature.validDays())
              .put("by", signature.initials())
              .put(
                  behind.part().key(),
                  behind.json().put("made", now.toString()).put("by", signature.initials()));
      add(whole.toString());
    } catch (BadDocumentException e) {
      throw new WorkshopException("the calibration in force: " + e.getMessage());
    }
  }

  /** When the older of load and gauge was made, this part being made now. */
  private static Instant oldest(
      CalibrationInForce.Standing standing, CalibrationPart made, Instant now) {
    return Stream.of(CalibrationPart.LOAD, CalibrationPart.GAUGE)
        .filter(part -> part == made || standing.made().containsKey(part))
        .map(part -> part == made ? now : standing.made().get(part).at())
        .min(Instant::compareTo)
        .orElse(now);
  }

  private void add(String document) throws WorkshopException {
    workshop.calibrations().add(document);
    inForce.readAgain();
    gradeAgain.all();
  }
}
