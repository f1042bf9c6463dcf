package sagwright.screen.orders;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.SwingUtilities;
import sagwright.beam.Taper;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.grade.WordScale;
import sagwright.job.FinishedCues;
import sagwright.job.KeepOrder;
import sagwright.job.KeepTapers;
import sagwright.job.PlanFinish;
import sagwright.job.PlannedFinish;
import sagwright.job.ShopSettings;
import sagwright.job.TakeBack;
import sagwright.screen.Desk;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What stands behind the orders page, on the work thread. */
public final class OrdersDesk extends Desk implements OrdersActions {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

  private final KeepOrder keepOrder;
  private final ShopSettings settings;
  private final SpeciesTable species;
  private final Mailbox<OrdersView> mailbox;
  private final FinishedCues finishedCues;
  private final KeepTapers keepTapers;
  private final PlanFinish planFinish;
  private final TakeBack takeBack;
  private final AtomicReference<Typed> newest = new AtomicReference<>();
  private boolean rackIsStale = true; // of the work thread

  /** An order as it was typed last. */
  private record Typed(Order order, String pickedTag, Consumer<PlannedFinish> planned) {}

  public OrdersDesk(
      Workshop workshop, SpeciesTable species, Executor work, Mailbox<OrdersView> mailbox) {
    super(work);
    this.keepOrder = new KeepOrder(workshop, species);
    this.settings = new ShopSettings(workshop);
    this.species = species;
    this.finishedCues = new FinishedCues(workshop, species);
    this.keepTapers = new KeepTapers(workshop);
    this.takeBack = new TakeBack(workshop, species);
    this.planFinish = new PlanFinish(workshop, species);
    this.mailbox = mailbox;
  }

  /** What the page shows before the records were read. */
  public static OrdersView atFirst(ShopUnits units) {
    return new OrdersView(
        List.of(),
        next(List.of()),
        AskPlaces.AT_FIRST,
        WordScale.AT_FIRST,
        List.of(),
        List.of(),
        List.of(),
        units);
  }

  /** Reads the records anew. */
  public void refresh() {
    atWork(this::show);
  }

  private void show() throws WorkshopException {
    rackIsStale = true;
    List<OrdersView.Row> rows =
        keepOrder.all().stream().map(k -> new OrdersView.Row(k.order(), k.blank())).toList();
    mailbox.put(
        new OrdersView(
            rows,
            next(rows),
            AskPlaces.AT_FIRST.withMiddle(settings.wordScale().usual()),
            settings.wordScale(),
            species.all(),
            finishedCues.all(),
            keepTapers.all(),
            mailbox.newest().units()));
  }

  /** One more than the greatest number there is, in the same form: R-0012 behind R-0011. */
  private static String next(List<OrdersView.Row> rows) {
    String prefix = "R-";
    int digits = 4;
    long greatest = 0;
    for (OrdersView.Row row : rows) {
      Matcher matcher = NUMBERED.matcher(row.order().number());
      if (matcher.matches() && matcher.group(2).length() < 10) {
        long number = Long.parseLong(matcher.group(2));
        if (number > greatest) {
          greatest = number;
          prefix = matcher.group(1);
          digits = matcher.group(2).length();
        }
      }
    }
    return prefix + String.format(Locale.ROOT, "%0" + digits + "d", greatest + 1);
  }

  @Override
  public void take(Order order, Reply reply) {
    andShow(
        reply,
        () -> {
          if (mailbox.newest().orders().stream().anyMatch(row -> isOf(order.number(), row))) {
            throw new WorkshopException("number: there is an order " + order.number() + " already");
          }
          keepOrder.take(order);
        });
  }

  private static boolean isOf(String number, OrdersView.Row row) {
    return row.order().number().equalsIgnoreCase(number);
  }

  @Override
  public void undo(Consumer<String> said) {
    String[] what = {""};
    andShow(
        Reply.onEventThread(() -> said.accept("Taken back: " + what[0] + "."), said),
        () -> what[0] = takeBack.last());
  }

  @Override
  public void change(Order order, Reply reply) {
    andShow(reply, () -> keepOrder.change(order));
  }

  @Override
  public void keepTaper(String name, Taper taper, Reply reply) {
    andShow(reply, () -> keepTapers.keep(name, taper));
  }

  @Override
  public void renameTaper(long id, String name, Reply reply) {
    andShow(reply, () -> keepTapers.rename(id, name));
  }

  @Override
  public void deleteTaper(long id, Reply reply) {
    andShow(reply, () -> keepTapers.delete(id));
  }

  @Override
  public void undoTaper(Reply reply) {
    andShow(reply, keepTapers::undo);
  }

  private void andShow(Reply reply, Job job) {
    atWork(
        reply,
        () -> {
          job.run();
          show();
        });
  }

  @Override
  public void plan(Order order, String pickedTag, Consumer<PlannedFinish> planned) {
    newest.set(new Typed(order, pickedTag, planned));
    atWork(this::planNewest);
  }

  private void planNewest() throws WorkshopException {
    Typed typed = newest.getAndSet(null);
    if (typed == null) {
      return; // planned with a keystroke before
    }
    if (rackIsStale) {
      planFinish.readAgain();
      rackIsStale = false;
    }
    PlannedFinish planned = planFinish.plan(typed.order(), typed.pickedTag());
    SwingUtilities.invokeLater(() -> typed.planned().accept(planned));
  }
}
