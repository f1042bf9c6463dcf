package sagwright.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the loading branch of drawn runs is found, with what is wrong with them in benches. */
class StiffnessFinderTest {

  @Test
  void ordinaryRunIsFittedFromAFifthToNearItsGreatestLoad() throws PoorRunException {
    StiffnessFit fit = DrawnRun.ordinary().fit();
    assertRight(fit);
    assertEquals(4, fit.windowFromN(), 0.2);
    assertEquals(19, fit.windowToN(), 0.2);
    assertEquals(20, fit.greatestLoadN(), 0.1);
    assertEquals(0, fit.restLoadN(), 0.01);
    assertEquals(0, fit.restDeflectionMm(), 0.002);
    assertEquals(0, fit.hysteresisPercent(), 0.1);
    assertEquals(0, fit.samplesSetAside());
    assertTrue(fit.warnings().isEmpty(), () -> "" + fit.warnings());
    assertEquals(fit.loadAtZeroDeflectionN(), 0, 0.02);
  }

  @Test
  void lineUncertaintyIsYorksFromTheStatedUncertainties() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    StiffnessFit fit = run.fit();
    LineSums used = LineSums.over(run.deflectionMm, run.loadN, fit.used(), 0, run.size());
    YorkLine line = YorkLine.ofEqualErrors(used, 0.005, 0.02);
    assertEquals(line.slope(), fit.stiffnessNPerMm(), 1e-12);
    double larger = line.slopeStdError() * Math.max(1, line.scatterFactor());
    assertEquals(larger, fit.lineUncertaintyNPerMm(), 1e-12);
    assertEquals(used.n(), fit.samplesUsed());
  }

  @Test
  void offsetsChangeNoAnswer() throws PoorRunException {
    StiffnessFit plain = DrawnRun.ordinary().fit();
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.loadN[i] += 4096;
      run.deflectionMm[i] -= 512;
    }
    StiffnessFit moved = run.fit();
    assertArrayEquals(plain.used(), moved.used());
    assertEquals(plain.stiffnessNPerMm(), moved.stiffnessNPerMm(), 1e-9);
    assertEquals(plain.lineUncertaintyNPerMm(), moved.lineUncertaintyNPerMm(), 1e-9);
    assertEquals(plain.hysteresisPercent(), moved.hysteresisPercent(), 1e-6);
    assertEquals(plain.windowFromN(), moved.windowFromN(), 1e-8);
    assertEquals(plain.greatestLoadN(), moved.greatestLoadN(), 1e-8);
  }

  @Test
  void unitsOfAnySizeGiveTheSameFit() throws PoorRunException {
    StiffnessFit plain = DrawnRun.ordinary().fit();
    double loads = 8192;
    double lengths = 1.0 / 1024;
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.loadN[i] *= loads;
      run.deflectionMm[i] *= lengths;
    }
    StiffnessFit scaled =
        StiffnessFinder.find(run.samples(), new ReadingUncertainty(0.02 * loads, 0.005 * lengths));
    assertArrayEquals(plain.used(), scaled.used());
    assertEquals(
        plain.stiffnessNPerMm() * loads / lengths,
        scaled.stiffnessNPerMm(),
        1e-9 * scaled.stiffnessNPerMm());
  }

  @Test
  void sameReadingsGiveTheSameAnswerToTheLastDigit() throws PoorRunException {
    StiffnessFit once = DrawnRun.ordinary().fit();
    StiffnessFit again = DrawnRun.ordinary().fit();
    assertEquals(once.stiffnessNPerMm(), again.stiffnessNPerMm(), 0);
    assertEquals(once.lineUncertaintyNPerMm(), again.lineUncertaintyNPerMm(), 0);
  }

  @Test
  void readingsAreLeftAsTheyWere() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    double[] loads = run.loadN.clone();
    double[] deflections = run.deflectionMm.clone();
    run.fit();
    assertArrayEquals(loads, run.loadN, 0);
    assertArrayEquals(deflections, run.deflectionMm, 0);
  }

  @Test
  void seatingPressBeforeTheLoadingIsNotTheLoading() throws PoorRunException {
    StiffnessFit fit = DrawnRun.along(0, 0, 2, 19.6, 4, 0, 3, 0, 1, 20, 8, 20, 1, 0, 4, 0, 1).fit();
    assertRight(fit);
    assertFalse(fit.used()[5 * DrawnRun.SAMPLES_PER_S]);
    assertTrue(fit.used()[15 * DrawnRun.SAMPLES_PER_S]);
  }

  @Test
  void wayBackOfAHesitatingHandIsLeftOut() throws PoorRunException {
    StiffnessFit fit = DrawnRun.along(0, 0, 2, 15, 5, 8, 2, 20, 5, 20, 1, 0, 4, 0, 1).fit();
    assertRight(fit);
    assertFalse(fit.used()[8 * DrawnRun.SAMPLES_PER_S]);
  }

  @Test
  void unloadingIsNotFittedButGivesTheHysteresis() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 12 * DrawnRun.SAMPLES_PER_S; i < 16 * DrawnRun.SAMPLES_PER_S; i++) {
      double share = run.loadN[i] / 20;
      run.deflectionMm[i] += 0.1 * 4 * share * (1 - share);
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    // 0.1 mm at half load of 5 mm
    assertEquals(2, fit.hysteresisPercent(), 0.1);
    for (int i = 10 * DrawnRun.SAMPLES_PER_S; i < run.size(); i++) {
      assertFalse(fit.used()[i]);
    }
  }

  @Test
  void hysteresisIsNullWithoutUnloading() throws PoorRunException {
    StiffnessFit fit = DrawnRun.along(0, 0, 2, 20, 8, 20, 1).fit();
    assertRight(fit);
    assertNull(fit.hysteresisPercent());
  }

  @Test
  void breakIsNoUnloading() throws PoorRunException {
    DrawnRun run = DrawnRun.along(0, 0, 2, 20, 8, 1, 0.05, 0.5, 1);
    for (int i = 10 * DrawnRun.SAMPLES_PER_S; i < run.size(); i++) {
      run.deflectionMm[i] = 5 + 0.02 * (i - 10 * DrawnRun.SAMPLES_PER_S);
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertNull(fit.hysteresisPercent());
    assertNotNull(find(fit, RunWarning.Broke.class));
  }

  @Test
  void softToeIsLeftOut() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.bending(
                f -> f / 4 + 0.4 * (1 - Math.exp(-f / 1.5)), 0, 0, 2, 20, 8, 20, 2, 0, 4, 0, 1)
            .fit();
    assertRight(fit);
    assertTrue(fit.windowFromN() > 5, () -> "from " + fit.windowFromN());
    assertTrue(fit.warnings().isEmpty(), () -> "" + fit.warnings());
  }

  @Test
  void toeThatReachesFarIsSaidAndCounted() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.bending(
                f -> f / 4 + 0.4 * (1 - Math.exp(-f / 4)), 0, 0, 2, 20, 8, 20, 2, 0, 4, 0, 1)
            .fit();
    assertNotNull(find(fit, RunWarning.BranchBends.class));
    assertEquals(4, fit.stiffnessNPerMm(), 2 * fit.lineUncertaintyNPerMm());
    assertTrue(fit.windowFromN() > 12);
  }

  @Test
  void slackBeforeContactChangesNothing() throws PoorRunException {
    DrawnRun run = DrawnRun.along(0, 0, 3, 20, 8, 20, 1, 0, 4, 0, 1);
    for (int i = 2 * DrawnRun.SAMPLES_PER_S; i < run.size(); i++) {
      run.deflectionMm[i] += 0.8 * Math.min(1, (i - 160) / 80.0);
    }
    assertRight(run.fit());
  }

  @Test
  void yieldingBranchIsFittedLowAndSaysSo() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.bending(
                f -> f / 4 + (f > 12 ? 0.02 * (f - 12) * (f - 12) : 0), 0, 0, 2, 20, 8, 20, 2)
            .fit();
    assertRight(fit);
    assertTrue(fit.windowToN() < 13, () -> "to " + fit.windowToN());
    RunWarning.BranchBends bends = find(fit, RunWarning.BranchBends.class);
    assertNotNull(bends);
    assertTrue(fit.lineUncertaintyNPerMm() > 0.02 * fit.stiffnessNPerMm());
    assertTrue(bends.inWords().contains("bends"));
  }

  @Test
  void branchThatBendsAllAlongHasTheBendInItsUncertainty() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.bending(f -> f / 4 * (1 + 0.1 * f / 20), 0, 0, 2, 20, 8, 20, 2, 0, 4).fit();
    assertNotNull(find(fit, RunWarning.BranchBends.class));
    assertEquals(4, fit.stiffnessNPerMm(), 3 * fit.lineUncertaintyNPerMm());
    assertTrue(fit.windowToN() < 15);
  }

  @Test
  void slightBendAllAlongIsSaid() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.bending(f -> f / 4 * (1 + 0.02 * f / 20), 0, 0, 2, 20, 8, 20, 2, 0, 4).fit();
    assertNotNull(find(fit, RunWarning.BranchBends.class));
    assertEquals(4, fit.stiffnessNPerMm(), 3 * fit.lineUncertaintyNPerMm());
  }

  @Test
  void gaugeThatTouchesLateOrRunsOutOfTravelLeavesTheRestOfTheBranch() throws PoorRunException {
    for (StiffnessFit fit :
        new StiffnessFit[] {
          DrawnRun.bending(f -> Math.max(0, f - 8) / 4, 0, 0, 2, 20, 8, 20, 2, 0, 4).fit(),
          DrawnRun.bending(f -> Math.min(f, 12) / 4, 0, 0, 2, 20, 8, 20, 2, 0, 4).fit()
        }) {
      assertEquals(4, fit.stiffnessNPerMm(), 0.012);
      assertNotNull(find(fit, RunWarning.BranchBends.class));
    }
  }

  @Test
  void rowsOfWildSamplesAreSetAside() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 450; i < 460; i++) {
      run.loadN[i] += 8;
    }
    for (int i = 500; i < 505; i++) {
      run.deflectionMm[i] -= 3;
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertEquals(15, fit.samplesSetAside());
    assertFalse(fit.used()[455]);
    assertFalse(fit.used()[502]);
  }

  @Test
  void wildSamplesNeverCountAsTheGreatestLoad() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    run.loadN[0] = 50;
    run.loadN[run.size() - 1] = 80;
    for (int i = 850; i < 860; i++) {
      run.loadN[i] += 8;
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertEquals(20, fit.greatestLoadN(), 0.15);
  }

  @Test
  void dropoutsToZeroAreSetAsideThoughTheyLieOnTheLine() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 200; i < 800; i += 40) {
      run.loadN[i] = 0;
      run.deflectionMm[i] = 0;
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertTrue(fit.windowFromN() > 3.5, () -> "from " + fit.windowFromN());
  }

  @ParameterizedTest
  @ValueSource(ints = {250, 400, 550, 700})
  void readingsThatDropOutForAMomentAreNoRest(int from) throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = from; i < from + 15; i++) {
      run.loadN[i] = 0;
      run.deflectionMm[i] = 0;
    }
    assertRight(run.fit());
  }

  @Test
  void staleReadingsOfASlowGaugeAreLeftOut() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    DrawnRun.slowDown(run.deflectionMm, 8);
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertEquals(0, fit.hysteresisPercent(), 0.15);
    assertEquals("gauge", find(fit, RunWarning.StaleReadings.class).which());
    for (int i = 0; i < run.size(); i++) {
      assertTrue(!fit.used()[i] || i % 8 == 0);
    }
  }

  @Test
  void staleReadingsOfASlowLoadCellAreLeftOut() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    DrawnRun.slowDown(run.loadN, 8);
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertEquals("load cell", find(fit, RunWarning.StaleReadings.class).which());
  }

  @Test
  void coarseStepsWithSpikesAreNotTakenForASlowGauge() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.deflectionMm[i] = Math.round(run.deflectionMm[i] * 100) / 100.0;
      run.loadN[i] = Math.round(run.loadN[i] * 20) / 20.0;
    }
    for (int i = 7; i < run.size(); i += 43) {
      run.deflectionMm[i] += run.random.nextGaussian();
      run.loadN[i] += run.random.nextGaussian();
    }
    StiffnessFit fit = run.fit();
    assertRight(fit);
    assertNull(find(fit, RunWarning.StaleReadings.class));
    assertTrue(fit.samplesUsed() > 450);
  }

  @Test
  void driftAtRestMovesTheZeroOnly() throws PoorRunException {
    StiffnessFit fit = DrawnRun.along(0, -0.5, 10, 20, 8, 20, 1, -0.5, 4).fit();
    assertRight(fit);
    assertEquals(-0.25, fit.restLoadN(), 0.05);
  }

  @Test
  void runWithoutARestIsReckonedFromItsFirstReadings() throws PoorRunException {
    StiffnessFit fit = DrawnRun.along(3, 20, 6, 20, 1, 3, 4).fit();
    assertRight(fit);
    assertEquals(3, fit.restLoadN(), 0.3);
    assertEquals(17, fit.greatestLoadN(), 0.3);
  }

  @Test
  void massesHungOneAfterTheOtherGiveTheLineThroughTheirStops() throws PoorRunException {
    StiffnessFit fit =
        DrawnRun.along(
                0, 0, 2, 4, 0.1, 4, 3, 8, 0.1, 8, 3, 12, 0.1, 12, 3, 16, 0.1, 16, 3, 20, 0.1, 20, 3,
                0, 0.3, 0, 2)
            .fit();
    assertRight(fit);
  }

  @Test
  void slowWanderOfTheGaugeWidensTheUncertaintyAndIsSaid() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.deflectionMm[i] += 0.01 * Math.sin(i / 9.0);
    }
    StiffnessFit fit = run.fit();
    assertNotNull(find(fit, RunWarning.ScattersSlowly.class));
    assertEquals(4, fit.stiffnessNPerMm(), 2.5 * fit.lineUncertaintyNPerMm());
    assertTrue(
        fit.lineUncertaintyNPerMm() > 1.5 * DrawnRun.ordinary().fit().lineUncertaintyNPerMm());
  }

  @Test
  void understatedNoiseIsSaidAndScalesTheUncertainty() throws PoorRunException {
    DrawnRun run = DrawnRun.ordinary();
    for (int i = 0; i < run.size(); i++) {
      run.loadN[i] += 0.2 * run.random.nextGaussian();
    }
    StiffnessFit fit = run.fit();
    assertEquals(4, fit.stiffnessNPerMm(), 3 * fit.lineUncertaintyNPerMm());
    assertEquals(7.2, find(fit, RunWarning.ScattersMore.class).factor(), 0.7);
  }

  @Test
  void twelveSamplesAreEnough() throws PoorRunException {
    StiffnessFit fit = DrawnRun.ofLoads(0, 0, 1, 3, 5, 8, 11, 14, 16, 18, 20, 20).fit();
    assertEquals(4, fit.stiffnessNPerMm(), 3 * fit.lineUncertaintyNPerMm());
    assertEquals(20, fit.greatestLoadN(), 0.1);
  }

  @Test
  void zeroUncertaintiesGiveTheOrdinaryLineWithItsOwnScatter() throws PoorRunException {
    StiffnessFit fit =
        StiffnessFinder.find(DrawnRun.ordinary().samples(), new ReadingUncertainty(0, 0));
    assertRight(fit);
    assertTrue(fit.lineUncertaintyNPerMm() > 0.0005);
    assertTrue(fit.warnings().isEmpty(), () -> "" + fit.warnings());
    for (ReadingUncertainty one :
        new ReadingUncertainty[] {
          new ReadingUncertainty(0.02, 0), new ReadingUncertainty(0, 0.005)
        }) {
      assertRight(StiffnessFinder.find(DrawnRun.ordinary().samples(), one));
    }
  }

  /** Within 0.3 % and within four of its own standard uncertainties. */
  private static void assertRight(StiffnessFit fit) {
    double off = Math.abs(fit.stiffnessNPerMm() - DrawnRun.STIFFNESS_N_PER_MM);
    assertTrue(off < 0.003 * DrawnRun.STIFFNESS_N_PER_MM, () -> "off by " + off + " N/mm");
    assertTrue(off < 4 * fit.lineUncertaintyNPerMm(), () -> "off by " + off + " N/mm");
  }

  private static <T extends RunWarning> T find(StiffnessFit fit, Class<T> kind) {
    return fit.warnings().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElse(null);
  }
}
