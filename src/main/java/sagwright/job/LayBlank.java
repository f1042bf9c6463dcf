package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SetUpDocument;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Lays a blank on the bench: its shaft now, the set-up, what it may take, what it has shown. */
public final class LayBlank {
  private final Workshop workshop;
  private final BlankShaft shafts;
  private final SheetReader reader;
  private final Evaluator evaluator;
  private final SafeLoad safeLoad;

  public LayBlank(Workshop workshop, SpeciesTable species, SafeLoad safeLoad) {
    this.workshop = workshop;
    this.shafts = new BlankShaft(workshop, species);
    this.reader = new SheetReader(species);
    this.evaluator = new Evaluator(species);
    this.safeLoad = safeLoad;
  }

  /**
   * @param usual the shop's usual set-up, with the turn that the shaft lies at
   * @throws WorkshopException where there is no such blank, or the set-up is not on the shaft
   */
  public LaidBlank lay(String tag, SetUp usual, Calibration calibration) throws WorkshopException {
    Blank blank = workshop.blanks().require(tag);
    double lengthMm = shafts.now(blank).shaft().taper().lengthMm();
    if (usual.supportBMm() > lengthMm) {
      throw new WorkshopException(
          String.format(
              Locale.ROOT,
              "%s is %.0f mm long: the support at %.0f mm is not under it",
              blank.tag(),
              lengthMm,
              usual.supportBMm()));
    }
    Sheet before = shafts.onBench(blank, new SetUpDocument(usual, null, null, null), calibration);
    return new LaidBlank(
        blank,
        before,
        safeLoad.limits(before, calibration),
        safeLoad.expectedStiffnessNPerMm(before),
        runs(blank),
        workshop.blanks().state(blank).endedWhy());
  }

  /** The blank's runs that count, worked out from their sheets. */
  public List<TestedRun> runs(Blank blank) throws WorkshopException {
    List<TestedRun> tested = new ArrayList<>();
    for (Run run : workshop.runs().counting(blank)) {
      tested.add(tested(run));
    }
    return tested;
  }

  /** A run that gave an answer, worked out from its sheet. */
  public TestedRun tested(Run run) throws WorkshopException {
    try {
      Sheet sheet = reader.read(workshop.runs().sheet(run));
      return new TestedRun(run, sheet, evaluator.evaluate(sheet.bendTest()));
    } catch (BadDocumentException | PoorRunException e) {
      throw new WorkshopException("run " + run.id() + ": " + e.getMessage());
    }
  }
}
