package sagwright.screen.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.beam.SetUp;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishedShaft;
import sagwright.modulus.ModulusAlong;
import sagwright.modulus.ShearRatio;
import sagwright.quantity.Figures;
import sagwright.uncertainty.Estimate;
import sagwright.wood.Species;

/** What is said of the set-ups that are asked at: what the splice does there. */
final class ListeningWords {
  /** What is smaller than this is no more than rounding. */
  private static final double NOTHING = 1e-12;

  /** What is smaller than this no hand feels. */
  private static final double HARDLY = 5e-4;

  private ListeningWords() {}

  /**
   * The wood that a shaft will be of, as far as it is known before a blank is chosen.
   *
   * @param modulusMPa as published, else that of common ash
   */
  record Wood(double modulusMPa, double modulusToShearRatio) {
    /** European ash at 12 %, Wood-database figures being from 12 to 13 GPa; common practice. */
    private static final double COMMON_ASH_MPA = 12_500;

    static Wood of(Optional<Species> species) {
      return new Wood(
          species.map(Species::modulus12MPa).orElse(COMMON_ASH_MPA),
          species.map(Species::modulusToShearRatio).orElse(ShearRatio.ASSUMED_FOR_UNKNOWN_SPECIES));
    }
  }

  /**
   * Those set-ups that lie on the shaft.
   *
   * @param plan without problems (FinishCheck); null while there is none
   */
  static List<ListeningPicture.Strip> strips(
      List<AskFields.Place> places, FinishPlan plan, Wood wood) {
    List<ListeningPicture.Strip> strips = new ArrayList<>();
    for (AskFields.Place place : places) {
      SetUp setUp = place.setUp();
      if (plan != null && setUp.supportAMm() >= 0 && setUp.supportBMm() <= plan.lengthMm()) {
        strips.add(new ListeningPicture.Strip(place.name(), setUp, words(place, plan, wood)));
      }
    }
    return strips;
  }

  private static String words(AskFields.Place place, FinishPlan plan, Wood wood) {
    return plan.splice() == null ? "" : splice(shaft(plan, wood).spliceEffect(place.setUp()));
  }

  private static FinishedShaft shaft(FinishPlan plan, Wood wood) {
    ModulusAlong modulus = ModulusAlong.constant(new Estimate(wood.modulusMPa(), 0));
    return new FinishedShaft(
        BlankWood.ofOneWood(plan.taper(), null, modulus, wood.modulusToShearRatio()), plan, 0);
  }

  /** How much a splice counts, in words: 0.04 is 4 % stiffer. */
  static String splice(double effect) {
    double size = Math.abs(effect);
    if (size < NOTHING) {
      return "the splice counts nothing";
    }
    if (size < HARDLY) {
      return "the splice hardly counts";
    }
    return (effect > 0 ? "the splice adds " : "the splice takes off ")
        + Figures.rounded(100 * size, 1)
        + " %";
  }
}
