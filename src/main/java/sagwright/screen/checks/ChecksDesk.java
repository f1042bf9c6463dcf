package sagwright.screen.checks;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.HeadSession;
import sagwright.bench.HealthReport;
import sagwright.bench.LinkState;
import sagwright.bench.LoadCalibration;
import sagwright.check.CheckRod;
import sagwright.check.GaugeSpring;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PoorPointsException;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.job.ChecksShop;
import sagwright.job.Signature;
import sagwright.run.PoorRunException;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.WorkshopException;

/**
 * What stands behind the checks: every action goes to the work thread, which alone changes what is
 * kept here and puts the newest view into the mailbox.
 */
public final class ChecksDesk implements ChecksActions {
  /** Shows counts and steps as they are while there is no calibration. */
  private static final Calibration COUNTS =
      new Calibration(
          Instant.EPOCH,
          1,
          null,
          new LoadCalibration(1, 0, 0, 1),
          new GaugeCalibration(1, 0, 0, 1, 0),
          0,
          0);

  private final ChecksShop shop;
  private final HeadSession session;
  private final Executor work;
  private final Mailbox<ChecksView> mailbox;
  private final Consumer<String> layOnBench;
  private final LinePoints points;
  private String lastSigned = ""; // of the work thread, as the next two
  private ChecksView.Frame frame;
  private ChecksView.Health health = ChecksView.Health.NONE;

  /**
   * @param session to the bench head, the same that tests are recorded from
   * @param work one thread, the workshop's one writer
   * @param layOnBench given the rod's tag, lays it on the bench and opens that page; on the event
   *     thread
   */
  public ChecksDesk(
      ChecksShop shop,
      HeadSession session,
      Executor work,
      Mailbox<ChecksView> mailbox,
      Consumer<String> layOnBench) {
    this.shop = shop;
    this.session = session;
    this.work = work;
    this.mailbox = mailbox;
    this.layOnBench = layOnBench;
    this.points = new LinePoints(shop.drafts(), session);
    atWork(Reply.onEventThread(() -> {}, why -> {}), points::readDrafts);
  }

  /** What the screen shows before anything was looked at. */
  public static ChecksView atFirst(ChecksShop shop) {
    return new ChecksView(
        shop.due(),
        ChecksView.Line.NONE,
        ChecksView.Line.NONE,
        Optional.empty(),
        null,
        shop.rod(),
        ChecksView.Health.NONE,
        "",
        "");
  }

  private interface Job {
    void run() throws WorkshopException, PoorPointsException, PoorRunException;
  }

  private void atWork(Reply reply, Job job) {
    work.execute(
        () -> {
          try {
            job.run();
            mailbox.put(view());
            reply.done();
          } catch (WorkshopException | PoorPointsException | PoorRunException e) {
            reply.refused(e.getMessage());
          } catch (RuntimeException e) {
            System.getLogger(ChecksDesk.class.getName())
                .log(System.Logger.Level.ERROR, "at the checks", e);
            reply.refused("the program stumbled: see its log");
          }
        });
  }

  /** A job of which nobody waits to hear. */
  private void atWork(Job job) {
    atWork(
        Reply.onEventThread(
            () -> {},
            why ->
                System.getLogger(ChecksDesk.class.getName()).log(System.Logger.Level.WARNING, why)),
        job);
  }

  private ChecksView view() throws WorkshopException {
    return new ChecksView(
        shop.due(),
        points.view(Kind.LOAD),
        points.view(Kind.GAUGE),
        points.gravity(),
        frame,
        shop.rod(),
        health,
        lastSigned.isEmpty() ? shop.initials() : lastSigned,
        shop.undoable().orElse(""));
  }

  @Override
  public Live live() {
    BenchSnapshot snapshot = session.snapshot();
    return new Live(
        session.settled(), snapshot.link() == LinkState.READING, snapshot.linkInWords());
  }

  @Override
  public void lookAgain() {
    atWork(shop::readAgain);
  }

  @Override
  public void lookAtHealth() {
    atWork(() -> health = health(session.snapshot()));
  }

  private ChecksView.Health health(BenchSnapshot snapshot) {
    HealthReport report = report();
    boolean none = report.line().readings() == 0;
    return new ChecksView.Health(
        none ? null : report,
        shop.inForce().complete() == null,
        snapshot.linkInWords(),
        snapshot.lastRefused());
  }

  private HealthReport report() {
    Calibration calibration = shop.inForce().complete();
    return session.health(calibration == null ? COUNTS : calibration);
  }

  @Override
  public void apply(Kind kind, double known) {
    atWork(
        () -> {
          if (kind == Kind.LOAD) {
            shop.place().hangs(points.applied(kind, known));
          } else {
            shop.place().lifts(known);
          }
        });
  }

  @Override
  public void take(Kind kind, double known, Double reading, Reply reply) {
    atWork(reply, () -> points.take(kind, known, reading));
  }

  @Override
  public void takeBack(Kind kind) {
    atWork(() -> points.takeBack(kind));
  }

  @Override
  public void beginAnew(Kind kind) {
    atWork(() -> points.beginAnew(kind));
  }

  @Override
  public void setGravity(LocalGravity here, Reply reply) {
    atWork(reply, () -> points.setGravity(here));
  }

  @Override
  public void keepLine(Kind kind, Signature signature, Reply reply) {
    atWork(
        reply,
        () -> {
          GuidedPoints taken = points.taken(kind);
          LineCalibration line = points.line(kind);
          if (kind == Kind.GAUGE) {
            shop.keep().gauge(line, taken, signature);
          } else {
            LocalGravity here =
                points
                    .gravity()
                    .orElseThrow(
                        () ->
                            new WorkshopException(
                                "gravity: type it, or the latitude of the bench"));
            shop.keep().load(line, taken, here, signature);
          }
          points.beginAnew(kind);
          kept(signature);
        });
  }

  private void kept(Signature signature) throws WorkshopException {
    lastSigned = signature.initials();
    shop.readAgain();
  }

  @Override
  public void keepSpring(List<GaugeSpring.Push> pushes, Signature signature, Reply reply) {
    atWork(
        reply,
        () -> {
          shop.keep().spring(GaugeSpring.of(pushes, points.gravityOrStandard()), pushes, signature);
          kept(signature);
        });
  }

  @Override
  public void workFrame(String bar, Estimate modulusMPa, Reply reply) {
    atWork(reply, () -> frame = new ChecksView.Frame(bar, shop.frame(bar, modulusMPa)));
  }

  @Override
  public void keepFrame(Signature signature, Reply reply) {
    atWork(
        reply,
        () -> {
          if (frame == null) {
            throw new WorkshopException("name the bar and press Enter first");
          }
          shop.keep().frame(frame.compliance(), frame.bar(), signature);
          frame = null;
          kept(signature);
        });
  }

  @Override
  public void enterRod(String tag, CheckRod rod, Reply reply) {
    atWork(reply, () -> shop.enterRod(tag, rod));
  }

  @Override
  public void typeRod(double shownNPerMm, Reply reply) {
    atWork(
        reply,
        () -> {
          if (!shop.rod().hasRod()) {
            throw new WorkshopException("enter the rod itself first");
          }
          shop.typeRod(shownNPerMm);
        });
  }

  @Override
  public void layRod() {
    if (shop.rod().hasRod()) {
      layOnBench.accept(shop.rod().rod().blank().tag());
    }
  }

  @Override
  public void bringIn(String file, Reply reply) {
    atWork(
        reply,
        () -> {
          try {
            shop.keep().bringIn(Path.of(file));
          } catch (InvalidPathException e) {
            throw new WorkshopException("no file can be called " + file);
          }
          shop.readAgain();
        });
  }

  @Override
  public void writeHealthFile(FileReply reply) {
    work.execute(
        () -> {
          try {
            reply.written(shop.writeHealthFile(session.snapshot(), report()).toString());
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }

  @Override
  public void undo(Reply reply) {
    atWork(reply, shop::undo);
  }
}
