package sagwright.screen.bench;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.drawing.ModulusScene;

/**
 * What several runs on one shaft show together, as the bench's survey side shows it.
 *
 * @param runs in the order of the record
 * @param models the four that the runs can bear; empty for a single run
 * @param reason which model is proposed and why, one sentence; what is missing for one
 * @param next what to measure next to learn most
 * @param scene the modulus along the shaft
 * @param notes what the reader should know
 */
public record SurveyView(
    List<RunRow> runs,
    List<ModelRow> models,
    String reason,
    List<Next> next,
    ModulusScene scene,
    List<String> notes) {
  public SurveyView {
    runs = List.copyOf(runs);
    models = List.copyOf(models);
    next = List.copyOf(next);
    notes = List.copyOf(notes);
  }

  /**
   * One run.
   *
   * @param setUp as "100 to 1100, load 600, at 90°"
   * @param listens as "210 to 960"
   * @param modulusGPa with its ±
   * @param off residual in the proposed model over its own uncertainty; empty for none
   * @param standsOut whether it does not belong
   */
  public record RunRow(
      int number, String setUp, String listens, String modulusGPa, String off, boolean standsOut) {}

  /**
   * One model.
   *
   * @param word of docs/contract.md, section 8
   * @param says its moduli in words
   * @param aicc a dash where there are too few runs
   */
  public record ModelRow(
      String word, String says, String chiSquared, String aicc, boolean isProposed) {}

  /** A set-up to try, and what it would bring. */
  public record Next(SetUp setUp, String words) {}
}
