package sagwright.screen.orders;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.FinishPlan;
import sagwright.grade.Ask;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.grade.ReferenceCue;
import sagwright.grade.WordScale;
import sagwright.job.FinishedCues.FinishedCue;
import sagwright.modulus.ModulusAlong;
import sagwright.screen.ComplaintException;
import sagwright.uncertainty.Estimate;

class AskWordsTest {
  private static final SetUp MIDDLE = AskPlaces.AT_FIRST.middle();
  private static final SetUp BUTT = AskPlaces.AT_FIRST.butt();
  private static final Taper TAPER =
      Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473);

  private static final AskWords WORDS =
      new AskWords(
          WordScale.AT_FIRST,
          List.of(
              new FinishedCue(cue("25-020", 2.2), order("R-0003")),
              new FinishedCue(cue("25-02", 1.9), null),
              new FinishedCue(cue("12", 2.0), null)));

  private static ReferenceCue cue(String tag, double stiffnessNPerMm) {
    return new ReferenceCue(
        tag,
        TAPER,
        null,
        ModulusAlong.constant(new Estimate(12_000, 60)),
        14,
        new ReferenceCue.Measured(MIDDLE, new Estimate(stiffnessNPerMm, 0.004)));
  }

  private static Order order(String number) {
    Ask ask = Ask.ofStiffness(MIDDLE, 2.1, 5);
    return new Order(number, null, null, null, FinishPlan.bare(TAPER), ask, List.of());
  }

  private static AskWords.Asked read(String typed, SetUp at) throws ComplaintException {
    return WORDS.read("middle", typed, at);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.25|2.25|",
        "2,25|2.25|",
        "2¼|2.25|",
        "2.25 N/mm|2.25|",
        "12 lbf/in|2.1015220229577|", // 12 × 4.4482216152605/25.4
        "firm|2.575|firm",
        "FIRM|2.575|firm",
        "fi|2.575|firm",
        "m|2.325|middling",
        "as 25-020|2.2|as 25-020",
        "25-020|2.2|as 25-020",
        "25-02|1.9|as 25-02",
        "as 12|2|as 12",
        "as r-0003|2.2|as 25-020",
        "25-020 + 10 %|2.42|as 25-020 + 10 %",
        "as 25-020+10|2.42|as 25-020 + 10 %",
        "25-020 - 5%|2.09|as 25-020 − 5 %",
        "25-020 − 5 %|2.09|as 25-020 − 5 %",
        "as 25-020, a tenth firmer|2.42|as 25-020 + 10 %",
        "a tenth firmer than 25-020|2.42|as 25-020 + 10 %",
        "A tenth stiffer than R-0003|2.42|as 25-020 + 10 %",
        "a twentieth softer than 25-020|2.09|as 25-020 − 5 %",
        "7,5 % firmer than 25-020|2.365|as 25-020 + 7.5 %",
      })
  void everyWayOfAskingEndsAsAStiffness(String typed, double nPerMm, String askedAs)
      throws ComplaintException {
    AskWords.Asked asked = read(typed, MIDDLE);
    assertThat(asked.nPerMm().value()).isEqualTo(nPerMm, within(1e-12));
    assertThat(asked.askedAs()).isEqualTo(askedAs == null ? "" : askedAs);
  }

  /** The range 2.45 to 2.7 N/mm is 2.575 ± 4.854 %. */
  @Test
  void aWordBringsTheRangeThatItStandsForAsItsTolerance() throws ComplaintException {
    assertThat(read("firm", MIDDLE).tolerancePercent())
        .isEqualTo(100 * 0.125 / 2.575, within(1e-9));
    assertThat(read("2.5", MIDDLE).tolerancePercent()).isNull();
  }

  @Test
  void figureAndWordStandBehindEachOther() throws ComplaintException {
    assertThat(read("2.5", MIDDLE).behind()).isEqualTo("N/mm firm");
    assertThat(read("firm", MIDDLE).behind()).isEqualTo("2.575 N/mm");
    assertThat(read("as 25-020", MIDDLE).behind()).isEqualTo("2.2000 ± 0.0078 middling");
    assertThat(read("as 25-020", BUTT).behind()).endsWith("reckoned");
  }

  /** A tenth firmer is a tenth firmer at every set-up, and no surer than the cue itself. */
  @Test
  void aShareMoreIsAShareMoreAnywhere() throws ComplaintException {
    Estimate own = read("as 25-020", BUTT).nPerMm();
    Estimate firmer = read("as 25-020 + 10 %", BUTT).nPerMm();
    assertThat(firmer.value()).isCloseTo(1.1 * own.value(), within(1e-4));
    assertThat(firmer.standardUncertainty())
        .isCloseTo(1.1 * own.standardUncertainty(), within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "s", // supple or stout
        "stiffish",
        "as 25-099",
        "25-020 + lots",
        "25-020 + 10 % firmer",
        "a tenth firmer than",
        "a tenth firmer than 25-099",
        "25-020 - 100 %",
        "58 in",
        "2.25 kg",
      })
  void whatIsNoStiffnessIsRefusedInOneLineThatNamesTheField(String typed) {
    assertThatThrownBy(() -> read(typed, MIDDLE))
        .isInstanceOf(ComplaintException.class)
        .hasMessageStartingWith("middle: ")
        .hasMessageNotContaining("\n");
  }

  @Test
  void aWordHoldsInTheMiddleAlone() {
    assertThatThrownBy(() -> read("firm", BUTT))
        .hasMessage("middle: \"firm\" is a word for the middle; ask here by a figure or by a cue");
  }

  @Test
  void aCueThatIsTooShortForASetUpCannotBeAskedForThere() {
    SetUp past = new SetUp(700, 1474, 1075, 1075, 0);
    assertThatThrownBy(() -> read("as 25-020", past)).hasMessageContaining("past the butt");
    assertThat(WORDS.choices(past)).isEmpty();
  }

  @Test
  void theArrowsGoRoundThroughWordsAndCues() {
    assertThat(WORDS.next("", MIDDLE, 1)).contains("supple");
    assertThat(WORDS.next("supple", MIDDLE, 1)).contains("easy");
    assertThat(WORDS.next("stout", MIDDLE, 1)).contains("as 25-020");
    assertThat(WORDS.next("as 12", MIDDLE, 1)).contains("supple");
    assertThat(WORDS.next("", MIDDLE, -1)).contains("as 12");
    assertThat(WORDS.next("Supple", MIDDLE, -1)).contains("as 12");
    assertThat(WORDS.next("", BUTT, 1)).contains("as 25-020");
    assertThat(new AskWords(null, List.of()).next("", MIDDLE, 1)).isEmpty();
  }
}
