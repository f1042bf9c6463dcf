package sagwright.modulus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.run.HandReadings;
import sagwright.wood.SpeciesTable;

class BudgetAdviceTest {
  private static BendTest test(double diameterMm, double commonShare, double positionMm) {
    Station[] at = new Station[8];
    for (int i = 0; i < at.length; i++) {
      at[i] = Station.round(200 * i, 12.5 + 2.5 * i);
    }
    boolean[] measured = new boolean[at.length];
    Arrays.fill(measured, true);
    Taper taper = new Taper(SectionShape.ELLIPSE, List.of(at), 1490);
    double[] loads = {0, 4, 8, 12, 16, 20};
    double[] mm = Arrays.stream(loads).map(n -> n / 4).toArray();
    return new BendTest(
        new Shaft(taper, measured, null, null, null, diameterMm, commonShare, null),
        new BenchSetUp(new SetUp(100, 1100, 600, 600, 0), positionMm, 0.002, 0),
        Instrument.ASSUMED,
        new ShearRatio(14, 0),
        new HandReadings(loads, mm));
  }

  private static BudgetAdvice advice(BendTest test) throws Exception {
    return BudgetAdvice.of(test, new Evaluator(SpeciesTable.published()).evaluate(test));
  }

  @Test
  void diametersAreToBeMeasuredAgainWhereTheTestListens() throws Exception {
    BudgetAdvice advice = advice(test(0.05, 0, 0.1));
    assertThat(advice.source()).isEqualTo(BudgetSource.DIAMETER);
    assertThat(advice.nearMm()).isCloseTo(560, within(100.0));
    assertThat(advice.share()).isBetween(0.3, 1.0);
    assertThat(advice.inWords()).startsWith("measure the diameters near ");
  }

  @Test
  void theShareIsWhatTheBudgetLosesWhenTheseStationsAreKnown() throws Exception {
    BendTest test = test(0.05, 0, 0.1);
    BudgetAdvice advice = advice(test);
    // the variance by finite differences of the modulus with each diameter near the place
    Evaluator evaluator = new Evaluator(SpeciesTable.published());
    double e = evaluator.evaluate(test).modulusMPa();
    double sum = 0;
    int station = (int) Math.round(advice.nearMm() / 200);
    for (boolean ofWidth : new boolean[] {false, true}) {
      double moved = evaluator.evaluate(moved(test, station, ofWidth)).modulusMPa();
      sum += Math.pow((moved - e) / 1e-4 * 0.05, 2);
    }
    double total = Math.pow(evaluator.evaluate(test).modulusStdUncertaintyMPa(), 2);
    assertThat(advice.share()).isCloseTo(sum / total, within(1e-3));
  }

  private static BendTest moved(BendTest test, int station, boolean ofWidth) {
    Taper taper = test.shaft().taper();
    List<Station> stations = new ArrayList<>(taper.stations());
    Station s = stations.get(station);
    stations.set(
        station,
        new Station(
            s.xMm(), s.depthMm() + (ofWidth ? 0 : 1e-4), s.widthMm() + (ofWidth ? 1e-4 : 0)));
    Shaft shaft = test.shaft();
    return new BendTest(
        new Shaft(
            new Taper(taper.shape(), stations, taper.lengthMm()),
            shaft.widthMeasured(),
            null,
            null,
            null,
            shaft.diameterUncertaintyMm(),
            shaft.diameterCommonShare(),
            null),
        test.setUp(),
        test.instrument(),
        test.ratio(),
        test.readings());
  }

  @Test
  void calipersThatReadWrongEverywhereAreToBeChecked() throws Exception {
    assertThat(advice(test(0.05, 1, 0.1)).inWords()).startsWith("check the calipers on a gauge");
  }

  @Test
  void aBadPositionIsNamed() throws Exception {
    assertThat(advice(test(0.001, 0.5, 3)).inWords()).startsWith("measure again where it stands");
  }
}
