package sagwright.job;

import java.util.List;
import java.util.Optional;
import sagwright.choose.RankingWeights;
import sagwright.finish.ButtBore;
import sagwright.grade.Sureness;
import sagwright.grade.WordScale;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What a shop has set otherwise than usual. */
public final class ShopSettings {
  private final Workshop workshop;

  public ShopSettings(Workshop workshop) {
    this.workshop = workshop;
  }

  public Sureness sureness() throws WorkshopException {
    Optional<String> set = workshop.settings().get(Settings.SURENESS);
    return set.isEmpty() ? Sureness.USUAL : new Sureness(Double.parseDouble(set.get()));
  }

  public void setSureness(Sureness sureness) throws WorkshopException {
    workshop.settings().set(Settings.SURENESS, Double.toString(sureness.chance()));
  }

  /** The shop's words from soft to stiff. */
  public WordScale wordScale() throws WorkshopException {
    Optional<String> set = workshop.settings().get(Settings.SCALE_WORDS);
    return set.isEmpty()
        ? WordScale.AT_FIRST
        : WordScale.AT_FIRST.withWords(List.of(set.get().split(",")));
  }

  /**
   * Calls the ranges of the scale otherwise; what was graded and asked by the older words stays.
   *
   * @param words from soft to stiff, as many as there are ranges
   */
  public void setScaleWords(List<String> words) throws WorkshopException {
    try {
      WordScale.AT_FIRST.withWords(words);
    } catch (IllegalArgumentException e) {
      throw new WorkshopException(
          "words: " + WordScale.AT_FIRST.words().size() + " of them, no two alike");
    }
    workshop.settings().set(Settings.SCALE_WORDS, String.join(",", words));
  }

  public RankingWeights rankingWeights() throws WorkshopException {
    Optional<String> set = workshop.settings().get(Settings.RANKING_WEIGHTS);
    if (set.isEmpty()) {
      return RankingWeights.STIFFNESS_FIRST;
    }
    String[] weights = set.get().split(" ");
    return new RankingWeights(
        Double.parseDouble(weights[0]),
        Double.parseDouble(weights[1]),
        Double.parseDouble(weights[2]),
        Double.parseDouble(weights[3]));
  }

  public void setRankingWeights(RankingWeights weights) throws WorkshopException {
    workshop
        .settings()
        .set(
            Settings.RANKING_WEIGHTS,
            weights.stiffness()
                + " "
                + weights.mass()
                + " "
                + weights.balance()
                + " "
                + weights.spare());
  }

  /** How far the shop bores into a butt for lead. */
  public ButtBore buttBore() throws WorkshopException {
    Optional<String> set = workshop.settings().get(Settings.BUTT_BORE);
    if (set.isEmpty()) {
      return ButtBore.USUAL;
    }
    String[] mm = set.get().split(" ");
    return new ButtBore(
        Double.parseDouble(mm[0]), Double.parseDouble(mm[1]), Double.parseDouble(mm[2]));
  }

  public void setButtBore(ButtBore bore) throws WorkshopException {
    workshop
        .settings()
        .set(
            Settings.BUTT_BORE,
            bore.leftAtButtMm() + " " + bore.deepestMm() + " " + bore.diameterMm());
  }
}
