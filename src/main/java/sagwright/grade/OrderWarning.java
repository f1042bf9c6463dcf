package sagwright.grade;

import java.util.Locale;
import sagwright.uncertainty.Warning;

/** What an order asks for that the rules of the game do not allow, or that is seldom made so. */
public sealed interface OrderWarning extends Warning {
  /** Shorter than a rule allows. */
  record TooShort(double lengthMm, GameRules rules) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT, "%s: no shorter than %.0f mm", rules.game(), rules.leastLengthMm());
    }
  }

  /** Heavier than a rule allows. */
  record TooHeavy(double massG, GameRules rules) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT, "%s: no heavier than %.0f g", rules.game(), rules.mostMassG());
    }
  }

  /** A tip that is wider than a rule allows. */
  record TipTooWide(double tipMm, GameRules rules) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT, "%s: tip no wider than %.0f mm", rules.game(), rules.mostTipMm());
    }
  }

  /** A metal ferrule that is longer than a rule allows. */
  record FerruleTooLong(double lengthMm, GameRules rules) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT, "%s: ferrule no longer than %.1f mm", rules.game(), rules.mostFerruleMm());
    }
  }

  /**
   * A figure outside what is commonly made.
   *
   * @param what in words: "tip", "weight"
   */
  record Unusual(String what, double value, CommonPractice range) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "%s %s: common is %s to %s %s",
          what,
          plain(value),
          plain(range.from()),
          plain(range.to()),
          range.unit());
    }
  }

  /** The shaft grows thinner towards the butt. */
  record RunsBackwards(double fromMm, double toMm) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(Locale.ROOT, "taper runs backwards, %.0f to %.0f mm", fromMm, toMm);
    }
  }

  /**
   * Metal so thin that it can hardly be turned; 0 is no metal at all.
   *
   * @param wallMm of the ferrule at the tip
   */
  record ThinFerrule(double wallMm) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(Locale.ROOT, "the ferrule's wall is %.2f mm thin", wallMm);
    }
  }

  /** Wood so thin in the ferrule that it may break. */
  record ThinTenon(double boreMm, double tipMm) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT, "bore %.1f mm: thin wood in a tip of %.1f mm", boreMm, tipMm);
    }
  }

  /** A splice whose points reach into the joint or past the middle of the cue. */
  record LongSplice(double fromMm) implements OrderWarning {
    @Override
    public String inWords() {
      return String.format(Locale.ROOT, "splice points at %.0f mm: in the front half", fromMm);
    }
  }

  /** A joint without its weight. */
  record JointWithoutMass(double xMm) implements OrderWarning {
    @Override
    public String inWords() {
      return "joint counts with no weight: weigh it";
    }
  }

  private static String plain(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
