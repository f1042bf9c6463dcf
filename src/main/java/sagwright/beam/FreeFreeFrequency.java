package sagwright.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The first bending frequency of a shaft hung free at both ends: Euler–Bernoulli, no shear, no
 * rotary inertia.
 *
 * <p>Finite elements with Hermite cubics (Bathe, Finite Element Procedures, chapter 5), nodes at
 * every kink, stiffness and mass integrated with E·I(x) and m(x) as they are. The error of the
 * frequency falls with the fourth power of the element's length; the elements taken leave about
 * 1e-8. Inverse iteration with a shift below 0 (Bathe, chapter 11), where the matrix is positive
 * definite although the two rigid motions have frequency 0; these are swept out at each step.
 */
public final class FreeFreeFrequency {
  /** No element is longer than this share of the shaft. */
  private static final double LONGEST_ELEMENT = 1.0 / 100;

  /**
   * No element is shorter than this share of the shaft: 12·E·I/l³ of a very short one would drown
   * the rest in rounding. A kink nearer to a node than this lies inside an element, which is
   * integrated to either side of it all the same.
   */
  private static final double SHORTEST_ELEMENT = 1e-3;

  /** E·I may change by this factor from end to end of a stretch that one rule integrates. */
  private static final double MOST_STIFFNESS_RATIO = 2;

  /** A step that changes the eigenvalue by less, relative, leaves less than a tenth of that. */
  private static final double CONVERGED = 1e-10;

  private static final double NEARLY_CONVERGED = 1e-7;
  private static final int MOST_ITERATIONS = 200;

  /** (N·mm²·mm⁻³)/(g·mm) to 1/s²: N/mm is 1000 N/m and a gram is a thousandth of a kilogram. */
  private static final double PER_SECOND_SQUARED = 1e6;

  private final FreeShaft shaft;
  private final double[] nodes;
  private final BandMatrix stiffness;
  private final BandMatrix mass;

  private FreeFreeFrequency(FreeShaft shaft) {
    this.shaft = shaft;
    List<Kink> kinks = new ArrayList<>(shaft.kinks());
    shaft.pointMasses().forEach(point -> kinks.add(Kink.plain(point.xMm())));
    List<Stretch> stretches = Stretch.between(0, shaft.lengthMm(), kinks, this::isGentle);
    nodes = nodesOf(stretches, shaft.lengthMm());
    stiffness = new BandMatrix(2 * nodes.length);
    mass = new BandMatrix(2 * nodes.length);
    stretches.forEach(this::add);
    shaft.pointMasses().forEach(this::add);
  }

  /**
   * The first bending frequency in Hz.
   *
   * @throws IllegalArgumentException where the shaft has no mass or no stiffness
   */
  public static double hz(FreeShaft shaft) {
    double perSecondSquared = PER_SECOND_SQUARED * new FreeFreeFrequency(shaft).eigenvalue();
    if (!(perSecondSquared > 0) || Double.isInfinite(perSecondSquared)) {
      throw new IllegalArgumentException("a shaft that swings has stiffness and mass");
    }
    return Math.sqrt(perSecondSquared) / (2 * Math.PI);
  }

  private boolean isGentle(double fromMm, double toMm) {
    double length = toMm - fromMm;
    if (length > LONGEST_ELEMENT * shaft.lengthMm()) {
      return false;
    }
    // A step may lie at either end: look just inside.
    double first = shaft.bendingStiffnessNMm2().applyAsDouble(fromMm + 1e-3 * length);
    double last = shaft.bendingStiffnessNMm2().applyAsDouble(toMm - 1e-3 * length);
    return Math.max(first, last) <= MOST_STIFFNESS_RATIO * Math.min(first, last);
  }

  /** Ends of stretches, so that none lies across a node. */
  private static double[] nodesOf(List<Stretch> stretches, double lengthMm) {
    List<Double> nodes = new ArrayList<>(List.of(0.0));
    double shortest = SHORTEST_ELEMENT * lengthMm;
    for (Stretch stretch : stretches) {
      double end = stretch.toMm();
      if (end - nodes.get(nodes.size() - 1) >= shortest && lengthMm - end >= shortest) {
        nodes.add(end);
      }
    }
    nodes.add(lengthMm);
    return nodes.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void add(Stretch stretch) {
    int first = elementAt((stretch.fromMm() + stretch.toMm()) / 2);
    HermiteElement element = element(first);
    stretch.forEachPoint(
        (x, weight) -> {
          double ei = shaft.bendingStiffnessNMm2().applyAsDouble(x);
          stiffness.add(2 * first, element.curvatureAt(x), weight * ei);
          double perMm = shaft.massPerMmG().applyAsDouble(x);
          mass.add(2 * first, element.deflectionAt(x), weight * perMm);
        });
  }

  private void add(PointMass point) {
    int first = elementAt(point.xMm());
    mass.add(2 * first, element(first).deflectionAt(point.xMm()), point.massG());
  }

  private int elementAt(double xMm) {
    int element = 0;
    while (element < nodes.length - 2 && xMm >= nodes[element + 1]) {
      element++;
    }
    return element;
  }

  private HermiteElement element(int first) {
    return new HermiteElement(nodes[first], nodes[first + 1] - nodes[first]);
  }

  /** The first eigenvalue above 0 of K·x = λ·M·x. */
  private double eigenvalue() {
    double length = shaft.lengthMm();
    double[] shift = motion(x -> 1, x -> 0);
    normalise(shift);
    double[] tilt = motion(x -> x / length, x -> 1 / length);
    sweepOut(shift, tilt);
    normalise(tilt);
    // Symmetric and not, so that no first mode is missed.
    double[] bend =
        motion(
            x -> x * x / (length * length) * (1 + 0.3 * x / length),
            x -> x / (length * length) * (2 + 0.9 * x / length));
    double[][] rigid = {shift, tilt};
    BandMatrix shifted = null;
    double eigenvalue = 0;
    double lastChange = Double.MAX_VALUE;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      for (double[] motion : rigid) {
        sweepOut(motion, bend);
      }
      normalise(bend);
      double before = eigenvalue;
      eigenvalue = stiffness.between(bend, bend);
      double change = Math.abs(eigenvalue - before);
      // Small changes that no longer shrink are rounding.
      boolean isRounding = change <= NEARLY_CONVERGED * eigenvalue && change >= lastChange;
      if (change <= CONVERGED * eigenvalue || isRounding) {
        break;
      }
      lastChange = change;
      if (shifted == null) {
        shifted = stiffness.plus(0.1 * eigenvalue, mass).factored();
      }
      bend = shifted.solve(mass.times(bend));
    }
    return eigenvalue;
  }

  private double[] motion(DoubleUnaryOperator deflection, DoubleUnaryOperator slope) {
    double[] unknowns = new double[2 * nodes.length];
    for (int i = 0; i < nodes.length; i++) {
      unknowns[2 * i] = deflection.applyAsDouble(nodes[i]);
      unknowns[2 * i + 1] = slope.applyAsDouble(nodes[i]);
    }
    return unknowns;
  }

  /** Takes from x what of it is the motion, which is of unit mass. */
  private void sweepOut(double[] motion, double[] x) {
    double share = mass.between(motion, x);
    for (int i = 0; i < x.length; i++) {
      x[i] -= share * motion[i];
    }
  }

  private void normalise(double[] x) {
    double norm = Math.sqrt(mass.between(x, x));
    for (int i = 0; i < x.length; i++) {
      x[i] /= norm;
    }
  }
}
