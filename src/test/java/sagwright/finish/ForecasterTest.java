package sagwright.finish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

class ForecasterTest {
  private static final ForecastCase CONTRACT = ForecastCase.all().get(0);
  private static final SetUp MIDDLE = new SetUp(100, 1100, 600, 600, 0);

  private static final Taper BLANK =
      Taper.round(List.of(Station.round(0, 14), Station.round(1600, 34)), 1600);

  private static final Taper FINISHED =
      Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 28)), 1473);

  private static BlankWood blank(ModulusAlong modulus) {
    return BlankWood.ofOneWood(BLANK, 600.0, modulus, 14);
  }

  private static Forecast forecast(ModulusAlong modulus, FinishPlan plan, double wanted) {
    return Forecaster.forecast(new ForecastRequest(blank(modulus), plan, List.of(MIDDLE), wanted));
  }

  /** docs/contract.md, section 5: the digits of its example. */
  @Test
  void theContractsShaftIsForecastToItsDigits() {
    Forecast forecast = CONTRACT.forecast();
    AskedStiffness middle = forecast.stiffnesses().get(0);
    assertEquals(2.295855986282626, middle.stiffnessNPerMm(), 1e-14);
    assertEquals(0.03026910512519394, middle.estimate().standardUncertainty(), 2e-12);
    assertEquals(475.148676906, forecast.massG(), 1e-9);
    assertEquals(428.465539499, forecast.balanceFromButtMm(), 1e-9);
    assertEquals(29.43205, forecast.firstBendingHz(), 1e-5);
    assertEquals(0.2013, forecast.stiffnesses().get(1).estimate().standardUncertainty(), 5e-5);
    assertTrue(forecast.fits());
  }

  /** At the middle the contract's splice hardly counts, at the butt it does. */
  @Test
  void aSpliceCountsWhereItIsBent() {
    FinishedShaft shaft = new FinishedShaft(CONTRACT.blank(), CONTRACT.plan(), 8);
    assertEquals(3e-6, shaft.spliceEffect(CONTRACT.setUps().get(0)), 1e-6);
    assertEquals(0.04, shaft.spliceEffect(CONTRACT.setUps().get(1)), 0.01);
  }

  @Test
  void aBlankThatIsSplicedWhereTheOrderHasNoSpliceIsWarnedOf() {
    BlankWood spliced =
        new BlankWood(BLANK, 600.0, ModulusAlong.constant(new Estimate(12000, 50)), 14, true);
    FinishPlan bare = FinishPlan.bare(FINISHED);
    assertTrue(warnsOfUnplannedSplice(spliced, bare));
    assertFalse(warnsOfUnplannedSplice(spliced, CONTRACT.plan()));
    assertFalse(warnsOfUnplannedSplice(CONTRACT.blank(), bare));
  }

  private static boolean warnsOfUnplannedSplice(BlankWood blank, FinishPlan plan) {
    return Forecaster.forecast(new ForecastRequest(blank, plan, List.of(MIDDLE), 2))
        .warnings()
        .stream()
        .anyMatch(FinishWarning.SpliceNotPlanned.class::isInstance);
  }

  @ParameterizedTest
  @NullSource
  @ValueSource(doubles = 0)
  void aBlankWithoutAMassHasNoneToTell(Double massG) {
    BlankWood unweighed =
        BlankWood.ofOneWood(BLANK, massG, ModulusAlong.constant(new Estimate(12000, 50)), 14);
    Forecast forecast =
        Forecaster.forecast(
            new ForecastRequest(unweighed, FinishPlan.bare(FINISHED), List.of(MIDDLE), 2));
    assertNull(forecast.massG());
    assertNull(forecast.balanceFromButtMm());
    assertNull(forecast.firstBendingHz());
    assertInstanceOf(FinishWarning.NotWeighed.class, forecast.warnings().get(0));
  }

  @Test
  void aRoundThatDoesNotFitIsForecastAllTheSame() {
    Forecast forecast =
        forecast(
            ModulusAlong.constant(new Estimate(12000, 50)),
            FinishPlan.bare(FINISHED).cutFrom(200.0),
            2);
    assertEquals(-28, forecast.cut().leastSpareMm());
    assertTrue(forecast.stiffnesses().get(0).stiffnessNPerMm() > 0);
    assertInstanceOf(FinishWarning.DoesNotFit.class, forecast.warnings().get(0));
    assertEquals(
        "the finished round does not fit: it sticks out of the blank's butt end by 73.0 mm",
        forecast.warnings().get(0).inWords());
  }

  @Test
  void aModulusThatIsTheSameEverywhereGivesWhatOneModulusGives() {
    ModulusAlong one = ModulusAlong.constant(new Estimate(12000, 50));
    double v = 2500;
    ModulusAlong straight =
        ModulusAlong.straight(
            new double[] {0, 1600}, new double[] {12000, 12000}, new double[][] {{v, v}, {v, v}});
    ModulusAlong pieces =
        ModulusAlong.pieces(
            new double[] {700}, new double[] {12000, 12000}, new double[][] {{v, v}, {v, v}});
    FinishPlan plan = FinishPlan.bare(FINISHED).cutFrom(20.0);
    Forecast expected = forecast(one, plan, 2);
    for (ModulusAlong along : List.of(straight, pieces)) {
      AskedStiffness asked = forecast(along, plan, 2).stiffnesses().get(0);
      AskedStiffness same = expected.stiffnesses().get(0);
      assertEquals(same.stiffnessNPerMm(), asked.stiffnessNPerMm(), 1e-13);
      assertEquals(
          same.estimate().standardUncertainty(), asked.estimate().standardUncertainty(), 1e-12);
      assertEquals(expected.firstBendingHz(), forecast(along, plan, 2).firstBendingHz(), 1e-7 * 30);
    }
  }

  /** JCGM 100, 5.1.2, by differences: each parameter of the modulus moved by itself. */
  @Test
  void theUncertaintyOfAVaryingModulusIsItsCovarianceSpread() {
    double[][] covariance = {{90000, -20000}, {-20000, 40000}};
    double[] knots = {0, 1600};
    FinishPlan plan = new FinishPlan(FINISHED, 0, 20.0, null, null, List.of(), List.of());
    double[] gradient = new double[2];
    for (int i = 0; i < 2; i++) {
      double[] more = {11000, 13000};
      double[] less = {11000, 13000};
      more[i] += 1;
      less[i] -= 1;
      gradient[i] =
          (stiffness(ModulusAlong.straight(knots, more, covariance), plan)
                  - stiffness(ModulusAlong.straight(knots, less, covariance), plan))
              / 2;
    }
    double variance =
        gradient[0] * gradient[0] * 90000
            - 2 * gradient[0] * gradient[1] * 20000
            + gradient[1] * gradient[1] * 40000;
    ModulusAlong along = ModulusAlong.straight(knots, new double[] {11000, 13000}, covariance);
    assertEquals(
        Math.sqrt(variance),
        forecast(along, plan, 2).stiffnesses().get(0).estimate().standardUncertainty(),
        1e-7);
  }

  private static double stiffness(ModulusAlong modulus, FinishPlan plan) {
    return forecast(modulus, plan, 2).stiffnesses().get(0).stiffnessNPerMm();
  }

  /** Wood that stiffens towards the butt: the further on the cut, the stiffer the shaft. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 0.9})
  void theCutIsMovedToWhereTheForecastMeetsTheAsk(double share) {
    ModulusAlong rising =
        ModulusAlong.straight(
            new double[] {0, 1600}, new double[] {10000, 15000}, new double[2][2]);
    FinishPlan plan = FinishPlan.bare(FINISHED);
    double low = stiffness(rising, plan.cutFrom(0.0));
    double high = stiffness(rising, plan.cutFrom(127.0));
    double wanted = low + share * (high - low);
    Forecast forecast = forecast(rising, plan, wanted);
    assertTrue(forecast.fits());
    assertEquals(wanted, forecast.stiffnesses().get(0).stiffnessNPerMm(), 1e-11);
    assertEquals(0, forecast(rising, plan, low / 2).cut().fromMm(), 1e-9);
    assertEquals(127, forecast(rising, plan, 2 * high).cut().fromMm(), 1e-9);
  }

  @Test
  void whereNoCutMeetsTheAskTheNearestThatFitsIsTaken() {
    ModulusAlong dip =
        ModulusAlong.pieces(
            new double[] {640, 680}, new double[] {13000, 9000, 13000}, new double[3][3]);
    FinishPlan plan = FinishPlan.bare(FINISHED);
    Forecast forecast = forecast(dip, plan, 0.5);
    double nearest = Double.MAX_VALUE;
    for (double cut = 0; cut <= 127; cut += 0.25) {
      nearest = Math.min(nearest, stiffness(dip, plan.cutFrom(cut)));
    }
    assertTrue(forecast.stiffnesses().get(0).stiffnessNPerMm() <= nearest);
    assertEquals(nearest, forecast.stiffnesses().get(0).stiffnessNPerMm(), 1e-5);
  }

  @Test
  void oneModulusLeavesTheCutWhereTheSpareIsGreatest() {
    ModulusAlong one = ModulusAlong.constant(new Estimate(12000, 50));
    assertEquals(127, forecast(one, FinishPlan.bare(FINISHED), 2).cut().fromMm(), 1e-9);
  }

  @Test
  void planedThickerAShaftIsStifferAndHeavier() {
    ModulusAlong one = ModulusAlong.constant(new Estimate(12000, 50));
    FinishPlan plan = FinishPlan.bare(FINISHED);
    Forecast as = forecast(one, plan, 2);
    Forecast thicker = forecast(one, plan.thickerBy(0.1), 2);
    assertTrue(
        thicker.stiffnesses().get(0).stiffnessNPerMm() > as.stiffnesses().get(0).stiffnessNPerMm());
    assertTrue(thicker.massG() > as.massG());
  }
}
