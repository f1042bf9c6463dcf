package sagwright.job;

import java.util.Optional;
import sagwright.check.BadPointsException;
import sagwright.check.GuidedPoints;
import sagwright.check.LocalGravity;
import sagwright.check.PointsReader;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Points of a calibration that is not kept yet: on disk as soon as they are taken, so that an
 * evening's work outlives a power cut. And the gravity of the place, which seldom moves.
 */
public final class CalibrationDrafts {
  private static final String GRAVITY = "gravity.m/s2";

  private final Settings settings;

  public CalibrationDrafts(Workshop workshop) {
    this.settings = workshop.settings();
  }

  /** The two that are made of points. */
  public enum Kind {
    LOAD("draft.load", PointsReader.ofMassesInG()),
    GAUGE("draft.gauge", PointsReader.ofBlocks());

    private final String setting;
    private final PointsReader reader;

    Kind(String setting, PointsReader reader) {
      this.setting = setting;
      this.reader = reader;
    }
  }

  /** The points as they were left, in g or mm. */
  public GuidedPoints points(Kind kind) throws WorkshopException {
    Optional<String> csv = settings.get(kind.setting);
    try {
      return csv.isEmpty() ? GuidedPoints.NONE : new GuidedPoints(kind.reader.read(csv.get()));
    } catch (BadPointsException e) {
      throw new WorkshopException("the points that were left: " + e.getMessage());
    }
  }

  public void leave(Kind kind, GuidedPoints points) throws WorkshopException {
    settings.set(kind.setting, kind.reader.write(points.taken()));
  }

  /** Where the workshop stands; empty where nobody has said so. */
  public Optional<LocalGravity> gravity() throws WorkshopException {
    return settings.get(GRAVITY).map(text -> new LocalGravity(Double.parseDouble(text)));
  }

  public void gravity(LocalGravity gravity) throws WorkshopException {
    settings.set(GRAVITY, Double.toString(gravity.metresPerSecondSquared()));
  }
}
