package sagwright.screen.checks;

import java.util.List;
import sagwright.bench.SettledCounts;
import sagwright.check.CheckRod;
import sagwright.check.GaugeSpring;
import sagwright.check.LocalGravity;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.job.Signature;
import sagwright.screen.Reply;
import sagwright.uncertainty.Estimate;

/**
 * What the maker can ask for at the checks. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link ChecksView}.
 */
public interface ChecksActions {
  /** What the head shows at this moment. */
  Live live();

  /**
   * What load and gauge show, in their own counts.
   *
   * @param isReading whether readings come
   * @param line how the line stands, in words
   */
  record Live(SettledCounts counts, boolean isReading, String line) {}

  /** Looks at everything anew: the page has come into view. */
  void lookAgain();

  /** Looks at the line's health anew. */
  void lookAtHealth();

  /**
   * What is to be applied for the next point; a practice bench applies it at once.
   *
   * @param known mass in g or block in mm; 0 for nothing
   */
  void apply(Kind kind, double known);

  /**
   * Takes a point.
   *
   * @param known mass in g or block in mm
   * @param reading counts or steps; null for what the head shows, where it stands still
   */
  void take(Kind kind, double known, Double reading, Reply reply);

  /** Takes the last change of the points back: a point, or that all were put away. */
  void takeBack(Kind kind);

  /** Puts all points away, to begin anew. */
  void beginAnew(Kind kind);

  void setGravity(LocalGravity gravity, Reply reply);

  /** Keeps load or gauge as its points have it. */
  void keepLine(Kind kind, Signature signature, Reply reply);

  void keepSpring(List<GaugeSpring.Push> pushes, Signature signature, Reply reply);

  /** Works out what the frame gives; nothing is kept yet. */
  void workFrame(String bar, Estimate modulusMPa, Reply reply);

  /** Keeps what was worked out of the frame last. */
  void keepFrame(Signature signature, Reply reply);

  void enterRod(String tag, CheckRod rod, Reply reply);

  /** Keeps a reading of the rod that was noted elsewhere. */
  void typeRod(double shownNPerMm, Reply reply);

  /** Goes to the bench with the rod on it. */
  void layRod();

  /** Puts a calibration file in force. */
  void bringIn(String file, Reply reply);

  /** Writes the file for whoever helps; {@link FileReply} hears where. */
  void writeHealthFile(FileReply reply);

  /** Hears of a file that was written. */
  interface FileReply {
    void written(String file);

    void refused(String why);
  }

  /** Takes back what was kept last. */
  void undo(Reply reply);
}
