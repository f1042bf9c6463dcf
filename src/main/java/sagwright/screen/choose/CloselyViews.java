package sagwright.screen.choose;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import sagwright.beam.SetUp;
import sagwright.drawing.SeriesBars;
import sagwright.job.ChoosingShop;
import sagwright.job.TestedRun;
import sagwright.modulus.BudgetSource;
import sagwright.modulus.Evaluation;
import sagwright.quantity.Figures;
import sagwright.run.Readings;
import sagwright.run.StiffnessFit;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.Note;

/** Makes what is shown of one blank closely: its latest run, its budget, its notes. */
final class CloselyViews {
  /** A curve of a few hundred points looks the same as one of thousands. */
  private static final int MOST_PLOTTED = 300;

  private CloselyViews() {}

  static Closely closely(String tag, ChoosingShop.Look look) {
    if (look.latest().isEmpty()) {
      return nothing(tag, notes(look));
    }
    TestedRun run = look.latest().get();
    Evaluation evaluation = run.evaluation();
    double[][] curve = loading(run.readings(), evaluation.fit());
    return new Closely(
        tag,
        curve[0],
        curve[1],
        evaluation.shaftStiffnessNPerMm(),
        run.run().startedAt().substring(0, 10),
        setUp(run.setUp()),
        budget(evaluation),
        look.moisturePercent(),
        notes(look));
  }

  private static String setUp(SetUp at) {
    return String.format(
        Locale.ROOT,
        "supports %s and %s, load %s mm",
        Figures.asTyped(at.supportAMm()),
        Figures.asTyped(at.supportBMm()),
        Figures.asTyped(at.loadMm()));
  }

  /** Each source's part of the modulus's ±, which is 95 %. */
  private static List<SeriesBars.Bar> budget(Evaluation evaluation) {
    List<SeriesBars.Bar> bars = new ArrayList<>();
    for (Contribution c : evaluation.budget().greatestFirst()) {
      double plusMinus = Estimate.COVERAGE_FACTOR_95 * c.standardUncertainty();
      if (plusMinus > 0) {
        bars.add(
            new SeriesBars.Bar(
                BudgetSource.inWords(c.source()), plusMinus, Figures.rounded(plusMinus, 0)));
      }
    }
    return bars;
  }

  private static List<String> notes(ChoosingShop.Look look) {
    List<String> notes = new ArrayList<>();
    for (Note note : look.notes()) {
      String day = LocalDate.ofInstant(note.at(), ZoneId.systemDefault()).toString();
      notes.add(0, day + " " + note.words());
    }
    return notes;
  }

  /** Where there is no run to be looked at. */
  static Closely nothing(String tag, List<String> notes) {
    return new Closely(
        tag, new double[0], new double[0], Double.NaN, "", "", List.of(), null, notes);
  }

  /** The loading branch, from the rest to the greatest load: deflections, loads. */
  private static double[][] loading(Readings readings, StiffnessFit fit) {
    double[] loadN = readings.loadN();
    int last = 0;
    for (int i = 1; i < loadN.length; i++) {
      last = loadN[i] > loadN[last] ? i : last;
    }
    int step = 1 + last / MOST_PLOTTED;
    int end = last;
    int[] at = IntStream.rangeClosed(0, end).filter(i -> i % step == 0 || i == end).toArray();
    return new double[][] {
      IntStream.of(at)
          .mapToDouble(i -> readings.deflectionMm()[i] - fit.restDeflectionMm())
          .toArray(),
      IntStream.of(at).mapToDouble(i -> loadN[i] - fit.restLoadN()).toArray()
    };
  }
}
