package sagwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stretches of one row of the picture that nothing stands in yet. */
final class FreeSpans {
  /** A stretch from left to right. */
  record Span(double fromPx, double toPx) {
    double width() {
      return toPx - fromPx;
    }
  }

  private final List<Span> free = new ArrayList<>();

  FreeSpans(double fromPx, double toPx) {
    free.add(new Span(fromPx, toPx));
  }

  void take(double fromPx, double toPx) {
    List<Span> left = new ArrayList<>();
    for (Span span : free) {
      if (toPx <= span.fromPx() || fromPx >= span.toPx()) {
        left.add(span);
        continue;
      }
      if (fromPx > span.fromPx()) {
        left.add(new Span(span.fromPx(), fromPx));
      }
      if (toPx < span.toPx()) {
        left.add(new Span(toPx, span.toPx()));
      }
    }
    free.clear();
    free.addAll(left);
  }

  /** The free stretch of at least a width that begins at or right of a place, nearest first. */
  Optional<Span> rightOf(double px, double width) {
    return free.stream()
        .map(s -> new Span(Math.max(s.fromPx(), px), s.toPx()))
        .filter(s -> s.width() >= width)
        .min(Comparator.comparingDouble(Span::fromPx));
  }

  /** The free stretch of at least a width that ends at or left of a place, nearest first. */
  Optional<Span> leftOf(double px, double width) {
    return free.stream()
        .map(s -> new Span(s.fromPx(), Math.min(s.toPx(), px)))
        .filter(s -> s.width() >= width)
        .max(Comparator.comparingDouble(Span::toPx));
  }

  Optional<Span> widest(double atLeast) {
    return free.stream()
        .filter(s -> s.width() >= atLeast)
        .max(Comparator.comparingDouble(Span::width));
  }
}
