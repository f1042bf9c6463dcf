package sagwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;
import sagwright.run.PoorRunException;

class RepeatSeriesTest {
  private static final SetUp AT = InventedShaft.middle(100, 1100);

  private static List<SetUp> turns(double... degrees) {
    return DoubleStream.of(degrees).mapToObj(AT::turnedBy).toList();
  }

  private static SeriesAnswer solve(InventedShaft shaft, double... degrees)
      throws PoorRunException {
    try {
      return RepeatSeries.solve(SurveyProblem.of(shaft.test(turns(degrees))));
    } catch (DifferentShaftsException e) {
      throw new AssertionError(e);
    }
  }

  private static long counting(SeriesAnswer answer) {
    return answer.runs().stream().filter(r -> r.setAside() == null).count();
  }

  @Test
  void aMeanKnowsWhatIsCommonToAllRuns() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(8);
    double one = shaft.test(turns(0)).get(0).evaluation().modulusStdUncertaintyMPa();
    double few = solve(shaft, 0, 0, 0).modulusMPa().standardUncertainty();
    double many = solve(shaft, new double[60]).modulusMPa().standardUncertainty();
    assertTrue(few < one && many < few, one + " " + few + " " + many);
    double scales = 12000 * Math.hypot(0.001, 0.0005);
    assertTrue(many > scales, "sixty repeats do not average the scales out");
    assertTrue(many > 0.7 * few, "nor the calipers");
  }

  /**
   * Over many series the scatter of the runs is what positions and readings were stated to give.
   */
  @Test
  void repeatabilityIsTheScatterOfOneRun() throws PoorRunException {
    double squares = 0;
    double stated = 0;
    int freedom = 0;
    for (int seed = 0; seed < 60; seed++) {
      InventedShaft shaft = new InventedShaft(seed);
      SeriesAnswer answer = solve(shaft, 0, 0, 0, 0);
      squares += Math.pow(answer.repeatabilityMPa(), 2) * answer.degreesOfFreedom();
      freedom += answer.degreesOfFreedom();
      stated = new RunObservation(shaft.test(turns(0)).get(0)).independentUncertaintyMPa();
    }
    assertEquals(stated, Math.sqrt(squares / freedom), 0.1 * stated);
  }

  @Test
  void outOfRoundIsToldApartFromGrain() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(2).withoutErrors();
    shaft.ovalMm = 0.8;
    shaft.grainShare = 0.03;
    shaft.grainDegrees = 30;
    SeriesAnswer answer = solve(shaft, 0, 60, 120, 30, 90, 150);
    assertEquals(3, answer.grain().amplitudePercent(), 0.01);
    assertEquals(30, answer.grain().stifferDegrees(), 0.1);
    assertTrue(answer.grain().isSignificant());
    assertEquals(90, answer.shape().stifferDegrees(), 1e-9, "the width is the greater");
    assertTrue(answer.shape().isSignificant());
    // The two add as vectors at twice the turn: 3 % at 60° and the shape's at 180°.
    double shape = answer.shape().amplitudePercent();
    double x = 3 * Math.cos(Math.toRadians(60)) - shape;
    double y = 3 * Math.sin(Math.toRadians(60));
    assertEquals(Math.hypot(x, y), answer.stiffness().amplitudePercent(), 0.1);
    assertEquals(Math.toDegrees(Math.atan2(y, x)) / 2, answer.stifferWay().stifferDegrees(), 0.5);
    assertEquals(12000, answer.modulusMPa().value(), 1);
    assertTrue(answer.runs().get(4).fromShapePercent() > 0);
    assertTrue(answer.runs().get(0).fromShapePercent() < 0);
  }

  @Test
  void fewTurnsLeaveTheCalipersToSayWhichWayIsStiffer() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(2);
    shaft.ovalMm = 0.8;
    SeriesAnswer answer = solve(shaft, 0, 90, 180);
    assertNull(answer.grain());
    assertNull(answer.stiffness());
    assertEquals(90, answer.stifferWay().stifferDegrees(), 1e-9);
  }

  @Test
  void evenGrainIsSeldomTakenForUneven() throws PoorRunException {
    int seen = 0;
    for (int seed = 0; seed < 60; seed++) {
      seen += solve(new InventedShaft(seed), 0, 60, 120).grain().isSignificant() ? 1 : 0;
    }
    assertTrue(seen <= 3, seen + " of 60");
  }

  @Test
  void aBadRunIsNamedAndDoesNotCount() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(12);
    shaft.wrongRun = 1;
    shaft.wrongSupportMm = 15;
    SeriesAnswer three = solve(shaft, 0, 0, 0);
    assertEquals(2, counting(three));
    assertTrue(three.runs().get(1).setAside().contains("from the other runs'"));
    assertEquals(3, three.runs().size());
    InventedShaft again = new InventedShaft(12);
    again.wrongRun = 4;
    again.wrongSupportMm = 15;
    SeriesAnswer six = solve(again, 0, 0, 0, 0, 0, 0);
    assertEquals(5, counting(six));
    assertTrue(six.runs().get(4).setAside().contains("Grubbs"));
    assertTrue(
        six.warnings().stream().anyMatch(w -> w.inWords().startsWith("run 5 of 6 stands out")));
  }

  @Test
  void goodRunsAreSeldomSetAside() throws PoorRunException {
    int lost = 0;
    for (int seed = 0; seed < 100; seed++) {
      lost += counting(solve(new InventedShaft(seed), 0, 60, 120, 0, 60, 120)) < 6 ? 1 : 0;
      lost += counting(solve(new InventedShaft(seed), 0, 0, 0)) < 3 ? 1 : 0;
    }
    assertTrue(lost <= 4, lost + " of 200");
  }

  @Test
  void threeTurnsCannotTellGrainFromABadRunAndSaySo() throws PoorRunException {
    InventedShaft shaft = new InventedShaft(12);
    shaft.wrongRun = 1;
    shaft.wrongSupportMm = 15;
    SeriesAnswer answer = solve(shaft, 0, 60, 120);
    assertEquals(3, counting(answer));
    assertTrue(answer.warnings().stream().anyMatch(SeriesWarning.GrainOrBadRun.class::isInstance));
    assertNull(answer.repeatabilityMPa());
    assertFalse(answer.runs().isEmpty());
  }

  @Test
  void runsOfAnotherSetUpAreNoRepeats() throws PoorRunException, DifferentShaftsException {
    SurveyProblem problem =
        SurveyProblem.of(new InventedShaft(1).test(InventedShaft.EIGHT.subList(0, 2)));
    assertThrows(IllegalArgumentException.class, () -> RepeatSeries.solve(problem));
  }
}
