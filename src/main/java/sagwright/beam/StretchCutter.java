package sagwright.beam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Cuts a part of the shaft into {@link Stretch}es. */
final class StretchCutter {
  /** Kinks nearer to one another than this, in mm, are one. */
  private static final double SAME_PLACE_MM = 1e-9;

  private static final int MOST_HALVINGS = 60;

  /**
   * How often a gentle stretch is halved towards a root-type end: in u, x = end ± length·u², the
   * poles of a tapering section lie nearer.
   */
  private static final int HALVINGS_AT_ROOTS = 3;

  private final List<Kink> kinks;
  private final double[] roots;
  private final Stretch.Gentle gentle;
  private final List<Stretch> stretches = new ArrayList<>();

  StretchCutter(List<Kink> kinks, Stretch.Gentle gentle) {
    this.kinks = kinks.stream().sorted(Comparator.comparingDouble(Kink::xMm)).toList();
    this.gentle = gentle;
    roots = kinks.stream().filter(Kink::isRootType).mapToDouble(Kink::xMm).toArray();
  }

  List<Stretch> between(double fromMm, double toMm) {
    if (!(toMm - fromMm > SAME_PLACE_MM)) {
      return stretches;
    }
    double from = fromMm;
    for (Kink kink : kinks) {
      if (kink.xMm() > from + SAME_PLACE_MM && kink.xMm() < toMm - SAME_PLACE_MM) {
        cut(from, kink.xMm(), 0);
        from = kink.xMm();
      }
    }
    cut(from, toMm, 0);
    return stretches;
  }

  private void cut(double from, double to, int halvings) {
    boolean atFrom = false;
    boolean atTo = false;
    boolean near = false;
    for (double root : roots) {
      double before = from - root;
      double behind = root - to;
      atFrom |= Math.abs(before) <= SAME_PLACE_MM;
      atTo |= Math.abs(behind) <= SAME_PLACE_MM;
      double distance = Math.max(before, behind);
      near |= distance > SAME_PLACE_MM && distance < (to - from) * (1 - 1e-9);
    }
    boolean isShort = !near && !(atFrom && atTo) && gentle.isGentle(from, to);
    if (isShort || halvings == MOST_HALVINGS) {
      add(from, to, atFrom ? Stretch.Root.AT_FROM : atTo ? Stretch.Root.AT_TO : Stretch.Root.NONE);
    } else {
      double middle = (from + to) / 2;
      cut(from, middle, halvings + 1);
      cut(middle, to, halvings + 1);
    }
  }

  private void add(double from, double to, Stretch.Root root) {
    if (root == Stretch.Root.NONE) {
      stretches.add(new Stretch(from, to, root));
      return;
    }
    double[] ends = new double[HALVINGS_AT_ROOTS + 2];
    for (int i = 1; i < ends.length; i++) {
      ends[i] = (to - from) / (1 << (ends.length - 1 - i));
    }
    for (int i = 0; i + 1 < ends.length; i++) {
      if (root == Stretch.Root.AT_FROM) {
        Stretch.Root here = i == 0 ? root : Stretch.Root.NONE;
        stretches.add(new Stretch(from + ends[i], from + ends[i + 1], here));
      } else {
        int far = ends.length - 1 - i;
        Stretch.Root here = far == 1 ? root : Stretch.Root.NONE;
        stretches.add(new Stretch(to - ends[far], to - ends[far - 1], here));
      }
    }
  }
}
