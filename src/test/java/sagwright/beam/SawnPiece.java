package sagwright.beam;

import java.util.List;

/** A piece of one rectangular section from end to end, as strangers tested them. */
public final class SawnPiece {
  private SawnPiece() {}

  /** Depth and width where the row has them, in mm. */
  public static Taper of(Station section, double lengthMm) {
    double depth = section.depthMm();
    double width = section.widthMm();
    return new Taper(
        SectionShape.RECTANGLE,
        List.of(new Station(0, depth, width), new Station(lengthMm, depth, width)),
        lengthMm);
  }
}
