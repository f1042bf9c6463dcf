package sagwright.screen.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WoodHintTest {
  private static final List<String> WOODS =
      List.of("white ash", "European ash", "European beech", "purpleheart");

  @Test
  void aKnownWoodAndNoneNeedNoWord() {
    assertThat(WoodHint.of("", WOODS, false)).isEmpty();
    assertThat(WoodHint.of("european ASH", WOODS, false)).isEmpty();
  }

  @Test
  void anUnknownWoodIsSaidWithTheNamesThatAreNear() {
    assertThat(WoodHint.of("ash", WOODS, true))
        .isEqualTo("ash is not in the table of woods.  Down there offers white ash, European ash.");
    assertThat(WoodHint.of("wenge", WOODS, false))
        .isEqualTo("wenge is not in the table of woods.  Down there shows those that it has.");
  }

  @Test
  void aNameThatIsBegunIsCompletedByEnterUnlessItIsLeftSo() {
    assertThat(WoodHint.of("purple", WOODS, true)).isEqualTo("Enter takes purpleheart.");
    assertThat(WoodHint.of("purple", WOODS, false)).startsWith("purple is not in the table");
  }

  @Test
  void whatFollowsIsSaid() {
    assertThat(WoodHint.whatFollows()).contains("15 MPa", "passes it by");
  }
}
