package sagwright.screen.choose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import sagwright.choose.Allocation;
import sagwright.choose.RankingWeights;
import sagwright.grade.WordScale;
import sagwright.job.AllocateOrders;
import sagwright.job.ChoosingShop;
import sagwright.screen.Desk;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Cost;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.workshop.WorkshopException;

/**
 * What stands behind the Choose screen: every action goes to the work thread, which alone changes
 * what is held here, and puts the newest view into the mailbox. Of many steps in a row only the
 * last is worked out.
 */
public final class ChooseDesk extends Desk implements ChooseActions {
  private final ChoosingShop shop;
  private final Mailbox<ChooseView> mailbox;
  private final AtomicInteger steps = new AtomicInteger();
  private final AtomicInteger looks = new AtomicInteger();

  // all below: of the work thread
  private List<String> open = List.of();
  private String number;
  private ChoosingShop.Choice choice;
  private List<Row> serving = List.of();
  private List<Row> cannot = List.of();
  private final Map<String, Closely> closely = new HashMap<>();
  private AllocateOrders.Answer allOrders;
  private boolean isAllWanted;
  private Cost cost;
  private Promise made;
  private WordScale words = WordScale.AT_FIRST;
  private String said = "";

  private record Promise(String tag, String number) {}

  /**
   * @param work one thread, the workshop's one writer
   */
  public ChooseDesk(ChoosingShop shop, Executor work, Mailbox<ChooseView> mailbox) {
    super(work);
    this.shop = shop;
    this.mailbox = mailbox;
  }

  /** What is refused is said at the foot of the page. */
  private Reply atTheFoot() {
    return new Reply() {
      @Override
      public void done() {
        // the view shows it
      }

      @Override
      public void refused(String why) {
        said = why;
        show();
      }
    };
  }

  @Override
  public void refresh() {
    atWork(
        atTheFoot(),
        () -> {
          open = shop.openOrders();
          if (number == null && !open.isEmpty()) {
            number = open.get(0);
          }
          said = "";
          isAllWanted = false;
          readAgain();
        });
  }

  @Override
  public void open(String wanted) {
    atWork(
        atTheFoot(),
        () -> {
          said = "";
          if (!wanted.isBlank()) {
            number = shop.choose(wanted.trim()).number();
          }
          readAgain();
        });
  }

  @Override
  public void step(int by) {
    int mine = steps.incrementAndGet();
    atWork(
        atTheFoot(),
        () -> {
          open = shop.openOrders();
          if (open.isEmpty()) {
            said = "No order is open.";
            show();
            return;
          }
          number = stepped(by);
          said = "";
          if (mine == steps.get()) {
            readAgain();
          }
        });
  }

  /** The open order before or after the one that is shown, which may be open no more. */
  private String stepped(int by) {
    int at = open.indexOf(number);
    if (at < 0) {
      long before =
          number == null ? 0 : open.stream().filter(o -> o.compareToIgnoreCase(number) < 0).count();
      return open.get((int) Math.floorMod(by > 0 ? before : before - 1, (long) open.size()));
    }
    return open.get(Math.floorMod(at + by, open.size()));
  }

  private void readAgain() throws WorkshopException {
    words = shop.wordScale();
    closely.clear();
    allOrders = null;
    cost = null;
    if (number == null) {
      choice = null;
      serving = List.of();
      cannot = List.of();
    } else {
      open = shop.openOrders();
      choice = shop.choose(number);
      serving = ChooseViews.serving(choice, mailbox.newest().units());
      cannot = ChooseViews.cannot(choice, mailbox.newest().units());
    }
    show();
  }

  @Override
  public void lookAt(List<String> tags) {
    int mine = looks.incrementAndGet();
    int step = steps.get();
    atWork(
        atTheFoot(),
        () -> {
          if (mine != looks.get() || step != steps.get() || choice == null) {
            return;
          }
          for (String tag : tags) {
            if (!closely.containsKey(tag)) {
              closely.put(tag, CloselyViews.nothing(tag, List.of())); // also where it fails
              closely.put(tag, CloselyViews.closely(tag, shop.look(tag)));
            }
          }
          show();
          if (mine == looks.get() && step == steps.get()) {
            workOutCost(tags.get(0));
          }
        });
  }

  private void workOutCost(String tag) throws WorkshopException {
    Row row = serving.stream().filter(r -> r.tag().equals(tag)).findFirst().orElse(null);
    if (row == null || choice.promisedTag() != null || !open.contains(number)) {
      return;
    }
    readAllOrders();
    cost =
        new Cost(
            tag, open.size() - 1, allOrders.costOf(new Allocation.Pair(number, tag, row.chance())));
    show();
  }

  @Override
  public void promise(String tag, String order) {
    atWork(
        atTheFoot(),
        () -> {
          shop.promise(tag, order);
          made = new Promise(tag, order);
          number = order;
          said = "";
          readAgain();
        });
  }

  @Override
  public void takeBack() {
    atWork(
        atTheFoot(),
        () -> {
          Promise back = toTakeBack();
          if (back == null) {
            said = "No promise was made here that could be taken back.";
            show();
            return;
          }
          shop.takeBack(back.tag(), back.number());
          made = null;
          said = back.tag() + " is free again.";
          number = back.number();
          readAgain();
        });
  }

  @Override
  public void undo() {
    atWork(
        atTheFoot(),
        () -> {
          said = "Taken back: " + shop.undoLast() + ".";
          made = null;
          readAgain();
        });
  }

  @Override
  public void weigh(RankingWeights weights) {
    atWork(
        atTheFoot(),
        () -> {
          shop.weigh(weights);
          said = "";
          readAgain();
        });
  }

  @Override
  public void allOrders() {
    atWork(
        atTheFoot(),
        () -> {
          isAllWanted = true;
          readAllOrders();
          show();
        });
  }

  private void readAllOrders() throws WorkshopException {
    if (allOrders == null) {
      allOrders = shop.allOrders();
    }
  }

  private Promise toTakeBack() {
    if (made != null) {
      return made;
    }
    boolean isPromised = choice != null && choice.promisedTag() != null;
    return isPromised ? new Promise(choice.promisedTag(), number) : null;
  }

  private void show() {
    Promise back = toTakeBack();
    mailbox.put(
        new ChooseView(
            choice == null ? null : ChooseViews.asked(choice),
            number == null ? "" : ChooseViews.place(open, number),
            said,
            serving,
            cannot,
            choice == null ? RankingWeights.STIFFNESS_FIRST : choice.ranked().weights(),
            choice == null ? null : ChooseViews.words(words, choice.ranked().order().ask()),
            choice == null ? 0.95 : choice.sureness().chance(),
            new ArrayList<>(closely.values()),
            cost,
            back == null ? "" : back.tag() + " from " + back.number(),
            isAllWanted && allOrders != null ? AllOrdersViews.of(allOrders) : null,
            mailbox.newest().units(),
            false));
  }
}
