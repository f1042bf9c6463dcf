package sagwright.survey;

import java.util.Locale;
import sagwright.uncertainty.Warning;

/** What a survey's reader should know. */
public sealed interface SurveyWarning extends Warning {
  /** A run that does not belong to the others, counted from 0. */
  record RunStandsOut(int run) implements SurveyWarning {
    @Override
    public String inWords() {
      return "run "
          + (run + 1)
          + " stands out: it lies more than 4 standard uncertainties from what the others foretell";
    }
  }

  /** No model explains the runs within their stated uncertainties. */
  record RunsDisagree(double chiSquared, int degreesOfFreedom) implements SurveyWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the runs differ more than their stated uncertainties explain, even by the proposed model"
              + " (chi-squared %.1f with %d degrees of freedom)",
          chiSquared,
          degreesOfFreedom);
    }
  }

  /** Repeats scatter more than stated. */
  record PoorRepeats(double standardDeviationMPa, double statedMPa) implements SurveyWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "repeats of one set-up scatter by %.0f MPa where %.0f MPa are stated: the uncertainties"
              + " given here are made greater accordingly",
          standardDeviationMPa,
          statedMPa);
    }
  }

  /** Wood that no set-up listens to. */
  record NotHeard(double fromMm, double toMm) implements SurveyWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "no set-up listens to the wood from %.0f to %.0f mm: what is said of it is carried on"
              + " from beside it",
          fromMm,
          toMm);
    }
  }

  /** No other model can be told from one modulus. */
  record OneModelOnly(int runs) implements SurveyWarning {
    @Override
    public String inWords() {
      return "these "
          + runs
          + " runs cannot tell whether the modulus varies along the shaft: more, at other places,"
          + " would";
    }
  }

  /** A shaft that is spliced already. */
  record SplicedShaft() implements SurveyWarning {
    @Override
    public String inWords() {
      return "the shaft is spliced: one modulus of its shaft wood is given, and no other model"
          + " tried";
    }
  }

  /** Sheets that state different ratios r. */
  record RatiosDiffer(double least, double greatest) implements SurveyWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the sheets state different modulusToShearRatio, from %.4g to %.4g: each run keeps its"
              + " own",
          least,
          greatest);
    }
  }
}
