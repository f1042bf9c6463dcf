package sagwright.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Masses hung and a dial read. */
class HandReadFitTest {
  private static final ReadingUncertainty STATED = new ReadingUncertainty(0.02, 0.005);

  @Test
  void everyPairCountsInAnyOrder() throws PoorRunException {
    double[] load = {0, 4.905, 9.81, 14.715, 19.62};
    double[] deflection = {1.00, 2.21, 3.42, 4.62, 5.84};
    StiffnessFit fit = find(load, deflection);
    double[] shuffledLoad = {14.715, 0, 19.62, 4.905, 9.81};
    double[] shuffledDeflection = {4.62, 1.00, 5.84, 2.21, 3.42};
    StiffnessFit shuffled = find(shuffledLoad, shuffledDeflection);
    assertEquals(fit.stiffnessNPerMm(), shuffled.stiffnessNPerMm(), 1e-12);
    assertEquals(5, fit.samplesUsed());
    assertEquals(0, fit.windowFromN(), 0);
    assertEquals(19.62, fit.windowToN(), 1e-12);
    assertEquals(19.62, shuffled.greatestLoadN(), 1e-12);
    assertEquals(1.00, shuffled.restDeflectionMm(), 0);
    assertNull(fit.hysteresisPercent());
    YorkLine york = YorkLine.ofEqualErrors(LineSums.over(deflection, load), 0.005, 0.02);
    assertEquals(york.slope(), fit.stiffnessNPerMm(), 1e-12);
    assertEquals(york.slopeUncertainty(), fit.lineUncertaintyNPerMm(), 1e-12);
  }

  @Test
  void loadsAreReckonedFromTheLeast() throws PoorRunException {
    StiffnessFit fit = find(new double[] {5, 10, 15, 25}, new double[] {1.25, 2.5, 3.75, 6.25});
    assertEquals(4, fit.stiffnessNPerMm(), 1e-12);
    assertEquals(20, fit.greatestLoadN(), 1e-12);
    assertEquals(20, fit.windowToN(), 1e-12);
  }

  @Test
  void softFirstPairIsNotLeftOutAsAToe() throws PoorRunException {
    double[] load = {0, 5, 10, 15, 20};
    double[] deflection = {0, 1.45, 2.70, 3.95, 5.20};
    assertEquals(5, find(load, deflection).samplesUsed());
  }

  @Test
  void oneMisreadPairAmongSevenIsSetAsideWhereverItStands() throws PoorRunException {
    for (int wrong = 0; wrong < 7; wrong++) {
      double[] load = loads(7);
      double[] deflection = readDial(load);
      deflection[wrong] += wrong % 2 == 0 ? 1 : -0.5;
      StiffnessFit fit = find(load, deflection);
      assertFalse(fit.used()[wrong], "pair " + wrong);
      assertEquals(1, fit.samplesSetAside());
      assertEquals(4, fit.stiffnessNPerMm(), 0.012);
      RunWarning.PairSetAside warning = (RunWarning.PairSetAside) fit.warnings().get(0);
      assertEquals(load[wrong], warning.loadN());
      assertEquals(wrong % 2 == 0 ? 1 : 0.5, Math.abs(warning.offMm()), 0.03);
      assertTrue(warning.inWords().contains("misread"));
    }
  }

  @Test
  void misreadPairOfExactReadingsIsFoundToo() throws PoorRunException {
    double[] load = loads(8);
    double[] deflection = Arrays.stream(load).map(f -> f / 4).toArray();
    deflection[3] += 0.2;
    StiffnessFit fit =
        StiffnessFinder.find(new HandReadings(load, deflection), new ReadingUncertainty(0, 0));
    assertFalse(fit.used()[3]);
    assertEquals(4, fit.stiffnessNPerMm(), 1e-9);
  }

  @Test
  void misreadPairAmongSixStaysAndWidensTheUncertainty() throws PoorRunException {
    double[] load = loads(6);
    double[] deflection = readDial(load);
    deflection[4] += 0.5;
    StiffnessFit fit = find(load, deflection);
    assertEquals(6, fit.samplesUsed());
    assertEquals(4, fit.stiffnessNPerMm(), 3 * fit.lineUncertaintyNPerMm());
  }

  @Test
  void goodPairsAreHardlyEverSetAside() throws PoorRunException {
    Random random = new Random(11);
    int aside = 0;
    int warned = 0;
    for (int k = 0; k < 1000; k++) {
      double[] load = loads(7 + k % 9);
      double[] deflection = new double[load.length];
      for (int i = 0; i < load.length; i++) {
        deflection[i] = load[i] / 4 + 0.005 * random.nextGaussian();
        load[i] += 0.02 * random.nextGaussian();
      }
      StiffnessFit fit = find(load, deflection);
      aside += fit.samplesSetAside();
      warned += fit.warnings().isEmpty() ? 0 : 1;
    }
    assertTrue(aside <= 5, aside + " good pairs set aside in 1000 runs");
    assertTrue(warned <= 30, warned + " of 1000 good runs warned of");
  }

  @Test
  void pairsOnABendAreAllKeptAndSaid() throws PoorRunException {
    double[] load = loads(9);
    double[] deflection = Arrays.stream(load).map(f -> f / 4 * (1 + 0.15 * f / 20)).toArray();
    StiffnessFit fit = find(load, deflection);
    assertEquals(9, fit.samplesUsed());
    RunWarning.PairsBend bend = (RunWarning.PairsBend) fit.warnings().get(0);
    // slope from 4 to 4/1.3: 26 % of the middle
    assertEquals(26, bend.slopeChangePercent(), 3);
    assertTrue(fit.lineUncertaintyNPerMm() > 0.05 * fit.stiffnessNPerMm());
  }

  @Test
  void twoUnlikeLoadsAreTooFew() {
    PoorRunException e =
        assertThrows(
            PoorRunException.class,
            () -> find(new double[] {0, 10, 0, 10}, new double[] {0, 2.5, 0, 2.5}));
    assertTrue(e.getMessage().contains("2 unlike loads"), e.getMessage());
  }

  @Test
  void pairsThatShowNoStiffnessAreRefused() {
    double[] load = {0, 5, 10, 15};
    assertThrows(PoorRunException.class, () -> find(load, new double[] {5, 4, 3, 2}));
    assertThrows(PoorRunException.class, () -> find(load, new double[] {1, 1, 1, 1}));
    assertThrows(PoorRunException.class, () -> find(load, new double[] {0, 3, 0, 3}));
    assertThrows(PoorRunException.class, () -> find(new double[0], new double[0]));
  }

  @Test
  void threePairsOnALineAreEnough() throws PoorRunException {
    StiffnessFit fit = find(new double[] {0, 5, 10}, new double[] {0, 1.25, 2.5});
    assertEquals(4, fit.stiffnessNPerMm(), 1e-12);
    assertTrue(fit.lineUncertaintyNPerMm() > 0);
  }

  @Test
  void offsetsChangeNoAnswer() throws PoorRunException {
    double[] load = loads(8);
    double[] deflection = readDial(load);
    StiffnessFit plain = find(load, deflection);
    StiffnessFit moved =
        find(
            Arrays.stream(load).map(f -> f + 1024).toArray(),
            Arrays.stream(deflection).map(d -> d - 256).toArray());
    assertEquals(plain.stiffnessNPerMm(), moved.stiffnessNPerMm(), 1e-9);
    assertArrayEquals(plain.used(), moved.used());
  }

  private static StiffnessFit find(double[] load, double[] deflection) throws PoorRunException {
    return StiffnessFinder.find(new HandReadings(load, deflection), STATED);
  }

  private static double[] loads(int n) {
    double[] loads = new double[n];
    Arrays.setAll(loads, i -> 20.0 * i / (n - 1));
    return loads;
  }

  /** A dial read to 0.01 mm. */
  private static double[] readDial(double[] loads) {
    return Arrays.stream(loads).map(f -> Math.round(25 * f + 31.4) / 100.0).toArray();
  }
}
