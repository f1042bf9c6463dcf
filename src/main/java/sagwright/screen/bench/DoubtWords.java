package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.job.RightBlank;
import sagwright.screen.bench.BenchActions.Choice;

/** Whether it is the right blank, as the maker is asked. */
final class DoubtWords {
  private DoubtWords() {}

  static BenchView.Question question(RightBlank.Doubt doubt) {
    List<BenchView.Offer> offers = new ArrayList<>();
    offers.add(new BenchView.Offer(Choice.KEEP, "yes, keep the run here"));
    if (doubt.better() != null) {
      String tag = doubt.better().blank().tag();
      offers.add(new BenchView.Offer(Choice.MOVE_THERE, "it is " + tag + ": move the run there"));
    }
    offers.add(new BenchView.Offer(Choice.MOVE, "no, it is another blank"));
    offers.add(new BenchView.Offer(Choice.LATER, "leave it, ungraded"));
    return new BenchView.Question("Is this the right blank? " + why(doubt), offers);
  }

  /** Short: the question has one line. */
  private static String why(RightBlank.Doubt doubt) {
    List<String> reasons = new ArrayList<>();
    RightBlank.Better better = doubt.better();
    if (doubt.stiffnessPercent() != null && (doubt.isOfStiffness() || better != null)) {
      reasons.add(off(doubt.stiffnessPercent(), "softer", "stiffer"));
    }
    if (doubt.isOfMass()) {
      reasons.add(off(doubt.massPercent(), "lighter", "heavier"));
    }
    String own = reasons.isEmpty() ? "" : String.join(" and ", reasons) + " than before";
    String other =
        better == null
            ? ""
            : String.format(
                Locale.ROOT,
                "%s fits to %.1f %%",
                better.blank().tag(),
                Math.abs(better.percent()));
    return own + (own.isEmpty() || other.isEmpty() ? "" : "; ") + other + ".";
  }

  private static String off(double percent, String less, String more) {
    return String.format(Locale.ROOT, "%.0f %% %s", Math.abs(percent), percent < 0 ? less : more);
  }
}
