package sagwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.beam.Taper;

class LikelyShaftTest {
  /** 12.5 to 31 mm over 1490 mm: a cone of π/12·1490·(12.5² + 12.5·31 + 31²) = 586 988 mm³. */
  private static final Taper BLANK = ofButt(31);

  private static Taper ofButt(double buttMm) {
    return new Taper(
        SectionShape.ELLIPSE,
        List.of(new Station(0, 12.5, 12.5), new Station(1490, buttMm, buttMm)),
        1490);
  }

  @Test
  void aDiameterThatNoCueHasIsNotLikely() {
    assertThat(LikelyShaft.isLikelyMm(5.99)).isFalse();
    assertThat(LikelyShaft.isLikelyMm(6)).isTrue();
    assertThat(LikelyShaft.isLikelyMm(80)).isTrue();
    assertThat(LikelyShaft.isLikelyMm(80.01)).isFalse();
  }

  @Test
  void aDensityThatNoWoodHasIsNotLikelyToEitherSide() {
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, 402.0, "near size")).isEmpty(); // 685 kg/m³
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, null, null)).isEmpty();
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, 40.2, null).orElseThrow())
        .isCloseTo(68.49, within(0.01));
    assertThat(LikelyShaft.unlikelyKgM3(ofButt(3), 355.0, null).orElseThrow()).isGreaterThan(4000);
  }

  @Test
  void whatIsNotAllWoodMayBeDenser() {
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, 700.0, "planed")).isPresent();
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, 700.0, "finished cue")).isEmpty();
    assertThat(LikelyShaft.unlikelyKgM3(BLANK, 4600.0, "check rod")).isEmpty();
  }
}
