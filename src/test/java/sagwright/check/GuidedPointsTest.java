package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.check.CalibrationPoint.Direction;
import sagwright.check.GuidedPoints.Step;

class GuidedPointsTest {
  private static GuidedPoints of(double... known) {
    GuidedPoints points = GuidedPoints.NONE;
    for (double each : known) {
      points = points.plus(each, 1000 * each);
    }
    return points;
  }

  @Test
  void directionsOfTheExampleFilesAreFoundFromTheirMassesAlone() throws Exception {
    for (String file : List.of("load-points-example.csv", "gauge-points-example.csv")) {
      String csv = Files.readString(Path.of("calibration", file));
      PointsReader reader =
          file.startsWith("load") ? PointsReader.ofMassesInG() : PointsReader.ofBlocks();
      List<CalibrationPoint> written = reader.read(csv);
      GuidedPoints typed = GuidedPoints.NONE;
      for (CalibrationPoint point : written) {
        typed = typed.plus(point.applied(), point.reading());
      }
      assertEquals(written, typed.taken(), file);
      assertEquals(written, reader.read(reader.write(typed.taken())), file);
    }
  }

  @Test
  void eachStepFollowsFromWhatWasTaken() {
    assertEquals(Step.FIRST_ZERO, of().step());
    assertEquals(Step.GO_UP, of(0).step());
    assertEquals(Step.GO_ON_OR_TURN, of(0, 500, 1000).step());
    assertEquals(Step.GO_DOWN, of(0, 500, 1000, 500).step());
    assertEquals(Step.ROUND_DONE, of(0, 500, 1000, 500, 0).step());
    assertEquals(Step.GO_UP, of(0, 500, 1000, 500, 0, 0).step());
    assertEquals(2, of(0, 500, 0, 0, 500, 0).roundsDone());
  }

  @Test
  void aPointTakenTwiceKeepsItsDirection() {
    assertEquals(Direction.UP, of(0, 500, 500).taken().get(2).direction());
    assertEquals(Direction.DOWN, of(0, 500, 200, 200).taken().get(3).direction());
  }

  @Test
  void laterRoundsAreProposedAsTheFirstWent() {
    GuidedPoints points = of(0, 500, 2000, 1000);
    assertEquals(500, points.proposal().getAsDouble());
    points = points.plus(500, 1).plus(0, 1);
    List<Double> round = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      double next = points.proposal().getAsDouble();
      round.add(next);
      points = points.plus(next, 1);
    }
    assertEquals(List.of(0.0, 500.0, 1000.0, 2000.0, 1000.0, 500.0, 0.0), round);
    assertEquals(2, points.roundsDone());
    assertTrue(of(0, 500).proposal().isEmpty());
    assertEquals(0, of().proposal().getAsDouble());
  }

  @Test
  void theLastPointCanBeTakenBack() {
    assertEquals(of(0, 500), of(0, 500, 1000).withoutLast());
    assertEquals(of(), of().withoutLast());
  }

  @Test
  void aSpringIsTheSlopeOfForceOnTravel() throws Exception {
    // 0.05 N/mm, worked out by hand: 5.0 g more a millimetre at 9.81 m/s², buoyancy aside
    LocalGravity gravity = new LocalGravity(9.81);
    double gramsPerMm = 0.05 / gravity.loadN(1);
    GaugeSpring spring =
        GaugeSpring.of(
            List.of(
                new GaugeSpring.Push(2, 60 + 2 * gramsPerMm),
                new GaugeSpring.Push(5, 60 + 5 * gramsPerMm),
                new GaugeSpring.Push(9, 60 + 9 * gramsPerMm)),
            gravity);
    assertEquals(0.05, spring.springNPerMm(), 1e-12);
    assertThrows(
        PoorPointsException.class,
        () -> GaugeSpring.of(List.of(new GaugeSpring.Push(2, 60)), gravity));
    assertThrows(
        PoorPointsException.class,
        () ->
            GaugeSpring.of(
                List.of(new GaugeSpring.Push(2, 60), new GaugeSpring.Push(3, 50)), gravity));
  }
}
