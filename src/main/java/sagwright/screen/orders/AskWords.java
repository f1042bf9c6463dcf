package sagwright.screen.orders;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sagwright.beam.SetUp;
import sagwright.grade.Ask;
import sagwright.grade.ReferenceCue;
import sagwright.grade.WordScale;
import sagwright.job.FinishedCues.FinishedCue;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.uncertainty.Estimate;

/**
 * The ways in which a stiffness is asked for: a figure; a word of the shop's scale; as a finished
 * cue or as what an order was delivered with; some share firmer or softer than that. All end as a
 * stiffness at a set-up.
 *
 * <p>{@code 2.25} · {@code firm} · {@code as 25-020} · {@code 25-020 + 10 %} · {@code a tenth
 * firmer than R-0003}
 */
final class AskWords {
  private static final Map<String, Double> SHARES =
      Map.of(
          "a half", 50.0,
          "a third", 100.0 / 3,
          "a quarter", 25.0,
          "a fifth", 20.0,
          "a tenth", 10.0,
          "a twentieth", 5.0);

  private static final String SHARE = "(?<share>an? [a-z]+|[0-9][0-9.,]*)\\s*%?";
  private static final String WAY = "(?<way>firmer|stiffer|softer)";
  private static final Pattern THAN = Pattern.compile(SHARE + "\\s+" + WAY + "\\s+than\\s+(.+)");
  private static final Pattern SIGNED = Pattern.compile("\\s*(?<way>[+−-])\\s*" + SHARE);
  private static final Pattern IN_WORDS = Pattern.compile("\\s*,\\s*" + SHARE + "\\s+" + WAY);

  private static final int DECIMALS = 4;

  private final WordScale words;
  private final List<FinishedCue> cues;

  /**
   * @param words null where the shop has none
   */
  AskWords(WordScale words, List<FinishedCue> cues) {
    this.words = words;
    this.cues = List.copyOf(cues);
  }

  /**
   * What a stiffness was asked by.
   *
   * @param nPerMm without uncertainty where it is a figure or a word
   * @param tolerancePercent of a word, the range that it stands for; else null
   * @param askedAs how it was put; empty for a figure
   * @param behind what a person wants to see behind it: a word's figure, a figure's word
   */
  record Asked(Estimate nPerMm, Double tolerancePercent, String askedAs, String behind) {}

  /**
   * @param name how a complaint calls the field
   */
  Asked read(String name, String typed, SetUp at) throws ComplaintException {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty() || isFigure(text)) {
      double figure = Typed.quantity(name, typed, Unit.NEWTON_PER_MILLIMETRE);
      return new Asked(new Estimate(figure, 0), null, "", "N/mm " + wordAt(figure, at));
    }
    Optional<String> word = word(text);
    if (word.isPresent()) {
      return ofWord(name, word.get(), at);
    }
    Matcher than = THAN.matcher(text);
    String cue = than.matches() ? than.group(3) : text.replaceFirst("^as\\s+", "");
    Optional<String> named = nameIn(cue);
    if (named.isPresent()) {
      String behind = cue.substring(named.get().length());
      if (than.matches() && behind.isBlank()) {
        return ofCue(name, named.get(), percent(name, than.group("share"), than.group("way")), at);
      }
      if (behind.isBlank()) {
        return ofCue(name, named.get(), 0, at);
      }
      for (Pattern more : List.of(SIGNED, IN_WORDS)) {
        Matcher by = more.matcher(behind);
        if (!than.matches() && by.matches()) {
          return ofCue(name, named.get(), percent(name, by.group("share"), by.group("way")), at);
        }
      }
    }
    throw new ComplaintException(name + ": " + typed.strip() + " is no stiffness; " + ways());
  }

  /** The longest tag or order number that a text begins with, as the text has it. */
  private Optional<String> nameIn(String text) {
    return cues.stream()
        .flatMap(known -> names(known).stream())
        .filter(name -> text.regionMatches(true, 0, name, 0, name.length()))
        .max(Comparator.comparingInt(String::length));
  }

  /** A cue is called by its tag, or by the order that it was made for. */
  private static List<String> names(FinishedCue known) {
    return known.order() == null
        ? List.of(known.cue().name())
        : List.of(known.cue().name(), known.order().number());
  }

  private static boolean isFigure(String text) {
    return text.matches("[0-9.,½¼¾⅓⅔⅛⅜⅝⅞ /]+\\s*(n/mm|lbf/in)?");
  }

  private Optional<String> word(String text) {
    List<String> all = words == null ? List.of() : words.words();
    Optional<String> whole = all.stream().filter(w -> w.equalsIgnoreCase(text)).findFirst();
    List<String> begun =
        all.stream().filter(w -> w.toLowerCase(Locale.ROOT).startsWith(text)).toList();
    return whole.isPresent() || begun.size() != 1 ? whole : Optional.of(begun.get(0));
  }

  private Asked ofWord(String name, String word, SetUp at) throws ComplaintException {
    if (!at.equals(words.usual())) {
      throw new ComplaintException(
          name + ": \"" + word + "\" is a word for the middle; ask here by a figure or by a cue");
    }
    Ask ask = words.askFor(word);
    return new Asked(
        new Estimate(ask.stiffnessNPerMm(), 0),
        ask.tolerancePercent(),
        word,
        Figures.value(ask.stiffnessNPerMm(), 0) + " N/mm");
  }

  private Asked ofCue(String name, String called, double percent, SetUp at)
      throws ComplaintException {
    ReferenceCue cue =
        cues.stream()
            .filter(known -> names(known).contains(called))
            .findFirst()
            .orElseThrow()
            .cue();
    if (!cue.canLieOn(at)) {
      throw new ComplaintException(
          name + ": the set-up runs past the butt of " + cue.name() + ", ask at another");
    }
    double times = 1 + percent / 100;
    if (!(times > 0)) {
      throw new ComplaintException(name + ": nothing is softer by so much");
    }
    Estimate own = cue.stiffnessNPerMm(at);
    Estimate asked = new Estimate(rounded(own.value() * times), own.standardUncertainty() * times);
    return new Asked(
        asked,
        null,
        "as " + cue.name() + signed(percent),
        Figures.withPlusMinus(asked.value(), asked.halfWidth95())
            + " "
            + (cue.isMeasuredAt(at) ? wordAt(asked.value(), at) : "reckoned"));
  }

  /** No bench tells a stiffness more finely, and an order says what people can read. */
  private static double rounded(double nPerMm) {
    return new BigDecimal(nPerMm).setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue();
  }

  private static String signed(double percent) {
    return percent == 0
        ? ""
        : (percent > 0 ? " + " : " − ") + Figures.asTyped(Math.abs(percent)) + " %";
  }

  /**
   * @param way a sign, or in words
   */
  private static double percent(String name, String share, String way) throws ComplaintException {
    Double known = SHARES.get(share);
    double size = known == null ? Typed.quantity(name, share, Unit.PERCENT) : known;
    boolean isSofter = List.of("softer", "-", "−").contains(way);
    return isSofter ? -size : size;
  }

  /** The word of the scale for a stiffness at the usual set-up; empty at any other. */
  private String wordAt(double nPerMm, SetUp at) {
    return words != null && at.equals(words.usual()) && nPerMm > 0 ? words.wordFor(nPerMm) : "";
  }

  private String ways() {
    return cues.isEmpty()
        ? "a figure, or a word of the shop's scale"
        : "a figure, a word of the scale, or a cue as " + cues.get(0).cue().name();
  }

  /** All that can be asked by name at a set-up: words from soft to stiff, then cues. */
  List<String> choices(SetUp at) {
    List<String> choices = new ArrayList<>();
    if (words != null && at.equals(words.usual())) {
      choices.addAll(words.words());
    }
    cues.stream()
        .map(FinishedCue::cue)
        .filter(cue -> cue.canLieOn(at))
        .forEach(cue -> choices.add("as " + cue.name()));
    return choices;
  }

  /** The choice that follows what is typed, or comes before it; round and round. */
  Optional<String> next(String typed, SetUp at, int step) {
    List<String> choices = choices(at);
    if (choices.isEmpty()) {
      return Optional.empty();
    }
    int now = -1;
    for (int i = 0; i < choices.size(); i++) {
      now = choices.get(i).equalsIgnoreCase(typed.strip()) ? i : now;
    }
    int from = now < 0 && step < 0 ? 0 : now;
    return Optional.of(choices.get(Math.floorMod(from + step, choices.size())));
  }
}
