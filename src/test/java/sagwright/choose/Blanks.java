package sagwright.choose;

import java.util.List;
import java.util.Random;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.BlankWood;
import sagwright.finish.FinishPlan;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/** Invented blanks and orders. */
final class Blanks {
  static final SetUp SET_UP = new SetUp(100, 1100, 600, 600, 0);
  static final SetUp BUTT_SET_UP = new SetUp(700, 1450, 1075, 1075, 0);

  /** Its diameter has no uncertainty: a blank whose modulus has none is surely in or out. */
  static final FinishPlan PLAN =
      new FinishPlan(
          Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
          0,
          8.0,
          null,
          null,
          List.of(),
          List.of());

  private Blanks() {}

  static Order order(Ask ask, Ask... also) {
    return new Order("R-0007", null, null, null, PLAN, ask, List.of(also));
  }

  static Ask ask(double stiffnessNPerMm, double tolerancePercent) {
    return Ask.ofStiffness(SET_UP, stiffnessNPerMm, tolerancePercent);
  }

  static Ask askWithMass(double stiffnessNPerMm, double tolerancePercent, double massG) {
    return new Ask(SET_UP, stiffnessNPerMm, tolerancePercent, new Aim(massG, 15.0), null);
  }

  static BlankWood wood(double modulusMPa, double uncertaintyMPa) {
    return wood(modulusMPa, uncertaintyMPa, 31, 405);
  }

  static BlankWood wood(double modulusMPa, double uncertaintyMPa, double buttMm, double massG) {
    return BlankWood.ofOneWood(
        new Taper(
            SectionShape.ELLIPSE,
            List.of(Station.round(0, 12.5), Station.round(1490, buttMm)),
            1490),
        massG,
        ModulusAlong.constant(new Estimate(modulusMPa, uncertaintyMPa)),
        14);
  }

  /** As thick as the others, but cut short. */
  static BlankWood shortWood(double lengthMm) {
    return BlankWood.ofOneWood(
        new Taper(
            SectionShape.ELLIPSE,
            List.of(Station.round(0, 12.5), Station.round(lengthMm, 31)),
            lengthMm),
        405.0,
        ModulusAlong.constant(new Estimate(12000, 50)),
        14);
  }

  static Candidate someCandidate(String tag, Random random) {
    if (random.nextInt(10) == 0) {
      return Candidate.untested(tag);
    }
    return new Candidate(
        tag,
        wood(
            12000 + 900 * random.nextGaussian(),
            60 + 60 * random.nextDouble(),
            30 + 1.5 * random.nextGaussian(),
            405 + 15 * random.nextGaussian()));
  }
}
