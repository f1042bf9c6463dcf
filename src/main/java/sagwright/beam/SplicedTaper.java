package sagwright.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A taper with a {@link Splice} in its butt: what of each cross-section is core and what splice.
 * From the splice's start on the section is taken as round with the mean of depth and width; before
 * it, and with no splice at all, it is the taper's own.
 *
 * @param splice null for a shaft of one wood
 */
public record SplicedTaper(Taper taper, Splice splice) {
  /** Below this share of the radius a core is too thin to bend the integrands any more. */
  private static final double THIN_CORE = 0.02;

  /** Faces nearer to the round than this touch it. */
  private static final double TOUCHING_MM = 1e-10;

  /** A shaft of one wood. */
  public static SplicedTaper ofOneWood(Taper taper) {
    return new SplicedTaper(taper, null);
  }

  public double lengthMm() {
    return taper.lengthMm();
  }

  /** The radius of the round of mean diameter at x. */
  public double radiusAt(double xMm) {
    return (taper.depthAt(xMm) + taper.widthAt(xMm)) / 4;
  }

  /** Whether x lies behind the splice's start. */
  public boolean isSplicedAt(double xMm) {
    return splice != null && xMm > splice.fromMm();
  }

  /** Half the core's side at a place behind the splice's start; it may exceed the radius there. */
  public double coreHalfAt(double xMm) {
    double from = radiusAt(splice.fromMm());
    return from + buttShare(xMm) * (splice.coreHalfAtButtMm() - from);
  }

  /** How far x lies from the splice's start to the butt, 0 to 1. */
  private double buttShare(double xMm) {
    return (xMm - splice.fromMm()) / (lengthMm() - splice.fromMm());
  }

  /** Core and splice at a place behind the splice's start. */
  public SpliceSection spliceSectionAt(double xMm) {
    return new SpliceSection(coreHalfAt(xMm), radiusAt(xMm));
  }

  /**
   * The cross-section at x.
   *
   * @param turnDegrees how far the shaft is turned; it plays no part behind the splice's start
   */
  public WoodSection sectionAt(double xMm, double turnDegrees) {
    if (!isSplicedAt(xMm)) {
      return plainSection(xMm, turnDegrees);
    }
    SpliceSection section = spliceSectionAt(xMm);
    // Where all diameters grow by 1 mm, the radius grows by ½, the core's half by ½ at the splice's
    // start and by nothing at the butt.
    double core =
        section.halfMm() >= section.radiusMm()
            ? section.roundSecondMomentByRadiusMm3() / 2
            : (section.coreSecondMomentByRadiusMm3()
                    + (1 - buttShare(xMm)) * section.coreSecondMomentByHalfMm3())
                / 2;
    return new WoodSection(
        section.coreSecondMomentMm4(),
        section.spliceSecondMomentMm4(),
        section.roundAreaMm2(),
        SectionShape.ELLIPSE.shearFactor(),
        core,
        section.roundSecondMomentByRadiusMm3() / 2 - core,
        Math.PI * section.radiusMm());
  }

  private WoodSection plainSection(double xMm, double turnDegrees) {
    double depth = taper.depthAt(xMm);
    double width = taper.widthAt(xMm);
    double cos = Math.cos(Math.toRadians(turnDegrees));
    double cos2 = cos * cos;
    double sin2 = 1 - cos2;
    double secondMoment = taper.secondMomentAt(xMm, turnDegrees);
    double logGain =
        3 * (1 / depth + 1 / width)
            - 2 * (cos2 * width + sin2 * depth) / (cos2 * width * width + sin2 * depth * depth);
    return new WoodSection(
        secondMoment,
        0,
        taper.areaAt(xMm),
        taper.shape().shearFactor(),
        secondMoment * logGain,
        0,
        taper.shape().areaFactor() * (depth + width));
  }

  /**
   * Where the sections have kinks: at the stations, at the splice's start, and where the core's
   * faces or its corners come to lie on the round.
   */
  public List<Kink> kinks() {
    List<Kink> kinks = new ArrayList<>();
    for (int i = 1; i < taper.stationCount() - 1; i++) {
      kinks.add(Kink.plain(taper.stationXMm(i)));
    }
    if (splice == null || !(splice.fromMm() < lengthMm())) {
      return kinks;
    }
    kinks.add(Kink.rootType(splice.fromMm()));
    for (double x : placesWhereCoreIs(1)) {
      kinks.add(Kink.rootType(x));
    }
    for (double x : placesWhereCoreIs(Math.sqrt(0.5))) {
      kinks.add(Kink.plain(x));
    }
    return kinks;
  }

  /** Where behind the splice's start h is a given share of R. */
  private List<Double> placesWhereCoreIs(double shareOfRadius) {
    return placesWhere(x -> coreHalfAt(x) - shareOfRadius * radiusAt(x));
  }

  /**
   * Where behind the splice's start the core's faces touch a circle about the centre line that is
   * not the round, and where its corners do.
   */
  public List<Kink> kinksWithin(double circleRadiusMm) {
    List<Kink> kinks = new ArrayList<>();
    if (splice != null && splice.fromMm() < lengthMm()) {
      placesWhere(x -> coreHalfAt(x) - circleRadiusMm).forEach(x -> kinks.add(Kink.rootType(x)));
      placesWhere(x -> coreHalfAt(x) - circleRadiusMm * Math.sqrt(0.5))
          .forEach(x -> kinks.add(Kink.plain(x)));
    }
    return kinks;
  }

  /** Where something that is straight between the stations behind the splice's start is 0. */
  private List<Double> placesWhere(DoubleUnaryOperator straight) {
    List<Double> places = new ArrayList<>();
    double from = splice.fromMm();
    double atFrom = straight.applyAsDouble(from);
    for (int i = 1; i < taper.stationCount(); i++) {
      double to = i == taper.stationCount() - 1 ? lengthMm() : taper.stationXMm(i);
      if (to <= from) {
        continue;
      }
      double atTo = straight.applyAsDouble(to);
      if (atTo == 0) {
        places.add(to);
      } else if (atFrom < 0 != atTo < 0 && atFrom != 0) {
        places.add(from + (to - from) * atFrom / (atFrom - atTo));
      }
      from = to;
      atFrom = atTo;
    }
    return places;
  }

  /** Whether from one place to another no diameter changes more than one rule can follow. */
  public boolean isGentle(double fromMm, double toMm) {
    boolean gentle =
        GaussLegendre.parts(taper.depthAt(fromMm), taper.depthAt(toMm)) == 1
            && GaussLegendre.parts(taper.widthAt(fromMm), taper.widthAt(toMm)) == 1;
    if (!gentle || splice == null || toMm <= splice.fromMm()) {
      return gentle;
    }
    double first = Math.max(THIN_CORE * radiusAt(fromMm), coreHalfAt(fromMm));
    double last = Math.max(THIN_CORE * radiusAt(toMm), coreHalfAt(toMm));
    return GaussLegendre.parts(first, last) == 1 && isFarFromTouching(fromMm, toMm);
  }

  /**
   * The lines of h and R, carried on beyond a piece, may meet close behind it: a root-type end too,
   * though it lies outside. Gentle is what is no longer than its distance from there; what does end
   * where they meet is left to its {@link Stretch.Root}.
   */
  private boolean isFarFromTouching(double fromMm, double toMm) {
    double first = radiusAt(fromMm) - coreHalfAt(fromMm);
    double last = radiusAt(toMm) - coreHalfAt(toMm);
    double least = Math.min(Math.abs(first), Math.abs(last));
    boolean touches = least < TOUCHING_MM;
    boolean hasCorners = isWholeSquare(fromMm) && isWholeSquare(toMm);
    return touches || hasCorners || Math.max(Math.abs(first), Math.abs(last)) < 2.001 * least;
  }

  private boolean isWholeSquare(double xMm) {
    return coreHalfAt(xMm) <= 0.7072 * radiusAt(xMm);
  }
}
