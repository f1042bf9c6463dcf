package sagwright.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sagwright.wood.Seasoning.LastTurning;
import sagwright.wood.Seasoning.State;
import sagwright.wood.Seasoning.Weighing;

class SeasoningTest {
  private static final Instant TURNED = Instant.parse("2026-03-02T09:00:00Z");
  private static final LastTurning TURNING = new LastTurning(TURNED, true);

  private static Instant day(double day) {
    return TURNED.plusMillis((long) (day * Duration.ofDays(1).toMillis()));
  }

  private static Weighing weighed(double day, double massG) {
    return new Weighing(day(day), massG);
  }

  @Test
  void twoWeighingsAWeekApartThatDifferByLessThanAThousandthAreSettled() {
    Seasoning settled =
        Seasoning.of(TURNING, List.of(weighed(0, 400.0), weighed(7, 399.7)), day(10));
    assertThat(settled.state()).isEqualTo(State.SETTLED);
    assertThat(settled.sinceTurned()).isEqualTo(Duration.ofDays(10));
    assertThat(settled.daysMore()).isZero();
    Seasoning drying =
        Seasoning.of(TURNING, List.of(weighed(0, 400.0), weighed(7, 399.5)), day(10));
    assertThat(drying.state()).isEqualTo(State.DRYING);
    assertThat(drying.lossGPerWeek()).isCloseTo(0.5, within(1e-12));
    assertThat(drying.daysMore()).isNaN(); // two weighings tell no end
    Seasoning gaining =
        Seasoning.of(TURNING, List.of(weighed(0, 399.5), weighed(7, 400.1)), day(10));
    assertThat(gaining.state()).isEqualTo(State.GAINING);
  }

  @Test
  void oneWeighingOrTwoTooSoonAfterAnotherTellNothing() {
    assertThat(Seasoning.of(TURNING, List.of(), day(3)).state()).isEqualTo(State.UNKNOWN);
    assertThat(Seasoning.of(TURNING, List.of(weighed(1, 400)), day(3)).state())
        .isEqualTo(State.UNKNOWN);
    assertThat(Seasoning.of(TURNING, List.of(weighed(1, 400), weighed(3, 390)), day(3)).state())
        .isEqualTo(State.UNKNOWN);
  }

  /** The mass falls as m = 400 + 12·exp(−t/20 d): when its fall passes the limit is known. */
  @Test
  void anExponentialLossTellsWhenItIsOver() {
    List<Weighing> weighings =
        IntStream.rangeClosed(0, 3)
            .mapToObj(k -> weighed(7 * k, 400 + 12 * Math.exp(-7 * k / 20.0)))
            .toList();
    Seasoning drying = Seasoning.of(TURNING, weighings, day(22));
    assertThat(drying.state()).isEqualTo(State.DRYING);
    // 12/20·exp(−t/20)·7 = 0.1 % of the mass at the newest weighing; chords for tangents: a bit off
    double overAt = 20 * Math.log(12.0 / 20 * 7 / (0.001 * weighings.get(3).massG()));
    assertThat(drying.daysMore()).isCloseTo(overAt - 22, within(0.2));
  }

  @Test
  void aLossThatDoesNotFallOffTellsNoEnd() {
    Seasoning drying =
        Seasoning.of(TURNING, List.of(weighed(0, 410), weighed(7, 408), weighed(14, 406)), day(15));
    assertThat(drying.state()).isEqualTo(State.DRYING);
    assertThat(drying.daysMore()).isNaN();
  }
}
