package sagwright.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sagwright.beam.FairTaper.StandingOut;

class FairTaperTest {
  private final Random random = new Random(7);

  /** Sixteen stations of a shaft that runs straight to 740 mm and steeper from there. */
  private List<Station> kinked(double noiseMm) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      double x = 99.0 * i;
      double fair = 12 + 0.0105 * x + Math.max(0, x - 740) * 0.002;
      stations.add(
          new Station(
              x, fair + noiseMm * random.nextGaussian(), fair + noiseMm * random.nextGaussian()));
    }
    return stations;
  }

  private static void off(List<Station> stations, int at, double byMm) {
    Station s = stations.get(at);
    stations.set(at, new Station(s.xMm(), s.depthMm() + byMm, s.widthMm()));
  }

  @Test
  void aFairTaperWithTheNoiseOfCalipersIsNotQuestioned() {
    for (int i = 0; i < 200; i++) {
      assertThat(FairTaper.standingOut(kinked(0.03))).isEmpty();
    }
  }

  @Test
  void aMisreadingIsFoundAtEveryPlaceAndItsNeighboursAreNot() {
    for (int at = 0; at < 16; at++) {
      List<Station> stations = kinked(0.02);
      off(stations, at, at % 2 == 0 ? 1.0 : -1.0);
      List<StandingOut> found = FairTaper.standingOut(stations);
      assertThat(found).as("at %d", at).hasSize(1);
      assertThat(found.get(0).station()).isEqualTo(at);
      assertThat(found.get(0).isWidth()).isFalse();
      assertThat(Math.abs(found.get(0).offMm())).isCloseTo(1.0, within(0.5));
    }
  }

  @Test
  void twoMisreadingsAreBothFound() {
    List<Station> stations = kinked(0.02);
    off(stations, 4, 2.0);
    off(stations, 11, -1.5);
    assertThat(FairTaper.standingOut(stations)).extracting(StandingOut::station).contains(4, 11);
  }

  @Test
  void aWidthThatWasNotReadIsNotSaidTwice() {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      stations.add(Station.round(100.0 * i, 12 + i + (i == 3 ? 2 : 0)));
    }
    assertThat(FairTaper.standingOut(stations)).hasSize(1);
  }

  @Test
  void fewStationsTellNothing() {
    List<Station> stations = new ArrayList<>(kinked(0).subList(0, 5));
    off(stations, 2, 5);
    assertThat(FairTaper.standingOut(stations)).isEmpty();
  }
}
