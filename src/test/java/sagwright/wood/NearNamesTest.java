package sagwright.wood;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearNamesTest {
  private static final List<String> WOODS =
      SpeciesTable.published().all().stream().map(Species::name).toList();

  private static List<String> near(String typed) {
    return NearNames.of(typed, WOODS);
  }

  @Test
  void oneWordFindsAllNamesThatHaveIt() {
    assertThat(near("ash")).containsExactly("white ash", "European ash");
    assertThat(near("Ebony")).containsExactly("ebony African", "ebony East Indian", "ebony Ceylon");
  }

  @Test
  void aSlipOfTheKeyFindsWhatWasMeant() {
    assertThat(near("mapel")).contains("sugar maple", "red maple");
    assertThat(near("europaen ash").get(0)).isEqualTo("European ash");
    assertThat(near("hickery")).contains("shagbark hickory");
    assertThat(near("ashwood")).contains("European ash");
  }

  @Test
  void aWoodThatNothingIsNearToFindsNothing() {
    assertThat(near("wenge")).isEmpty();
    assertThat(near("  ")).isEmpty();
    assertThat(NearNames.first("wenge", WOODS)).isEqualTo(WOODS);
  }

  @Test
  void nearNamesComeFirstAndNoneIsLost() {
    List<String> first = NearNames.first("ash", WOODS);
    assertThat(first.subList(0, 2)).containsExactly("white ash", "European ash");
    assertThat(first).containsExactlyInAnyOrderElementsOf(WOODS);
  }
}
