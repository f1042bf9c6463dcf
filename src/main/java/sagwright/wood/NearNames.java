package sagwright.wood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Names that are near to one that was typed: word by word the same, begun alike, or with pairs of
 * letters in common (the coefficient of Sørensen, 1948, and Dice, 1945).
 */
public final class NearNames {
  /** A name is near where its words are so much like those typed, 0 to 1. Ours, no source. */
  private static final double LEAST = 0.5;

  private static final int LEAST_BEGUN = 2;

  private NearNames() {}

  /** Those that are near, nearest first; those alike in the order in which they were given. */
  public static List<String> of(String typed, List<String> names) {
    List<String> words = words(typed);
    ToDoubleFunction<String> near = name -> likeness(words, words(name));
    return names.stream()
        .filter(name -> near.applyAsDouble(name) >= LEAST)
        .sorted(Comparator.comparingDouble(near).reversed())
        .toList();
  }

  /** All names, those that are near first. */
  public static List<String> first(String typed, List<String> names) {
    List<String> ordered = new ArrayList<>(of(typed, names));
    names.stream().filter(name -> !ordered.contains(name)).forEach(ordered::add);
    return ordered;
  }

  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("\\P{L}+", -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  /** How far each typed word finds its like, on average. */
  private static double likeness(List<String> typed, List<String> name) {
    return typed.stream()
        .mapToDouble(
            word -> name.stream().mapToDouble(other -> likeness(word, other)).max().orElse(0))
        .average()
        .orElse(0);
  }

  private static double likeness(String word, String other) {
    boolean isBegun = word.length() >= LEAST_BEGUN && other.startsWith(word);
    if (isBegun || word.startsWith(other)) {
      return 1;
    }
    Set<String> pairs = pairs(word);
    Set<String> others = pairs(other);
    int all = pairs.size() + others.size();
    pairs.retainAll(others);
    return all == 0 ? 0 : 2.0 * pairs.size() / all;
  }

  private static Set<String> pairs(String word) {
    Set<String> pairs = new HashSet<>();
    for (int i = 0; i + 1 < word.length(); i++) {
      pairs.add(word.substring(i, i + 2));
    }
    return pairs;
  }
}
