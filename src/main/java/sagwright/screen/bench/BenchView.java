package sagwright.screen.bench;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.drawing.FittedLine;
import sagwright.drawing.PlottedRun;
import sagwright.drawing.TurnedRun;
import sagwright.grade.Ask;
import sagwright.grade.Verdict;
import sagwright.grade.WordScale;
import sagwright.screen.ShopUnits;
import sagwright.uncertainty.Estimate;

/**
 * All that the bench screen shows at one moment. Immutable; parts that stay the same from one view
 * to the next should be the same objects, so that their pictures need not be worked out again.
 *
 * @param shaft what lies there, null for nothing
 * @param order what it is tried for, null for none
 * @param phase where the test stands
 * @param detail the line under the instruction; empty for the phase's own
 * @param reading what the head shows just now
 * @param curves the runs on the plot
 * @param answer null before there is one
 * @param forecast null without an order or before there is an answer
 * @param words the shop's scale, null where the ask stands at another set-up
 * @param turns the runs so far, each at its turn, and how the shaft lies now
 * @param safety what keeps people safe, one line
 * @param line how the serial line and the check rod stand, one line
 * @param question null for none
 * @param warnings what the answer's reader should know, worst first
 * @param guess what the hand says before the bench; null where it is not asked
 */
public record BenchView(
    Laid shaft,
    Tried order,
    Phase phase,
    String detail,
    HeadReading reading,
    Curves curves,
    Answer answer,
    Forecast forecast,
    WordScale words,
    Turns turns,
    String safety,
    String line,
    Question question,
    List<String> warnings,
    GuessView guess) {
  public BenchView {
    warnings = List.copyOf(warnings);
  }

  /** The same with what the hand says. */
  BenchView withGuess(GuessView next) {
    return new BenchView(
        shaft, order, phase, detail, reading, curves, answer, forecast, words, turns, safety, line,
        question, warnings, next);
  }

  /** Whether the hand is to be asked before anything else. */
  boolean awaitsGuess() {
    return guess != null && guess.isAwaited();
  }

  /** The detail to be shown. */
  public String shownDetail() {
    return detail.isEmpty() ? phase.detail() : detail;
  }

  /**
   * The shaft on the bench.
   *
   * @param details one line: species, stage, mass, moisture
   * @param modulusToShearRatio r = E/G, for the shape of the bend
   * @param greatestBendMm deflection that the drawing must have room for
   * @param safeLoadN what the shaft may take
   */
  public record Laid(
      String tag,
      String details,
      Taper taper,
      SetUp setUp,
      double modulusToShearRatio,
      double greatestBendMm,
      double safeLoadN) {
    boolean isSameBlankAs(Laid other) {
      return other != null && other.tag.equals(tag);
    }
  }

  /**
   * The order that the shaft is tried for.
   *
   * @param ask held against the finished shaft
   */
  public record Tried(String number, Ask ask) {}

  /**
   * What the head shows, from the zero of the run; NaN where there is nothing.
   *
   * @param bendMm deflection less what the frame gives
   */
  public record HeadReading(double loadN, double deflectionMm, double bendMm) {
    public static final HeadReading NONE = new HeadReading(Double.NaN, Double.NaN, Double.NaN);
  }

  /**
   * The plot.
   *
   * @param runs the current one last
   * @param line null before there is one
   * @param letOffN NaN for none
   * @param greatestMm room on the deflection axis
   * @param greatestN room on the load axis
   */
  public record Curves(
      List<PlottedRun> runs, FittedLine line, double letOffN, double greatestMm, double greatestN) {
    public Curves {
      runs = List.copyOf(runs);
    }
  }

  /**
   * What the runs so far have shown.
   *
   * @param from which runs, as "So far, from runs 1 and 2"
   * @param stiffnessNPerMm of the shaft now
   * @param modulusMPa of its wood
   * @param modulusAt12MPa the same at 12 % moisture; null where its moisture is not known
   * @param behind what stands behind their uncertainty
   * @param survey what all runs on the shaft show together
   */
  public record Answer(
      String from,
      Estimate stiffnessNPerMm,
      Estimate modulusMPa,
      Estimate modulusAt12MPa,
      BehindView behind,
      SurveyView survey) {}

  /**
   * What the finished shaft will be against the ask.
   *
   * @param chance of lying within the tolerance of all that is asked, 0 to 1
   * @param sureness the chance that the shop asks for, 0 to 1
   * @param note one line under the chance, as "inside the ask"
   * @param weightAndBalance one line; empty where the blank was not weighed
   * @param finished all that is known of it
   * @param units that the shop reads it in
   */
  public record Forecast(
      Estimate stiffnessNPerMm,
      Verdict verdict,
      double chance,
      double sureness,
      String note,
      String weightAndBalance,
      FinishedCue finished,
      ShopUnits units) {}

  /**
   * The runs at their turns.
   *
   * @param nowDegrees how the shaft lies
   * @param note how they agree; empty for nothing
   */
  public record Turns(double nowDegrees, List<TurnedRun> runs, String note) {
    public Turns {
      runs = List.copyOf(runs);
    }
  }

  /**
   * Something to be answered before it is forgotten.
   *
   * @param words one line, as "Is this the right blank? It is 7 % softer than on 3 March."
   */
  public record Question(String words, List<Offer> offers) {
    public Question {
      offers = List.copyOf(offers);
    }
  }

  /** One answer. */
  public record Offer(BenchActions.Choice choice, String words) {}
}
