package sagwright.screen.rack;

import java.util.List;
import java.util.function.Consumer;
import sagwright.screen.AskStrip;
import sagwright.screen.ComplaintException;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;

/**
 * What is asked of a record's blank in one line below it: a note, its mass, its splice, why it is
 * no more. One at a time.
 */
final class RecordQuestions {
  /** The page that they are asked on. */
  interface AskingPage {
    /** Shows a question in the foot's place; null takes it away. */
    void show(AskStrip question);

    /** The question was answered or left: work goes on at the record. */
    void goOn();

    void complain(String words);
  }

  private final RackActions actions;
  private final AskingPage page;
  private boolean isOpen;

  RecordQuestions(RackActions actions, AskingPage page) {
    this.actions = actions;
    this.page = page;
  }

  boolean isOpen() {
    return isOpen;
  }

  void note(String tag) {
    askOne("note", "A note on " + tag, words -> actions.note(tag, words, reply()));
  }

  void end(String tag) {
    askOne(
        "end",
        "Why is " + tag + " no more: sold, broken, firewood?",
        why -> actions.end(tag, why, reply()));
  }

  void weigh(BlankEntry known, ShopUnits units) {
    askOne(
        "weigh",
        "What " + known.tag() + " weighs, in " + units.mass().symbol(),
        typed -> weighed(known, typed, units));
  }

  private void weighed(BlankEntry known, String typed, ShopUnits units) {
    try {
      actions.measure(known.weighed(Typed.quantity("mass", typed, units.mass())), reply());
    } catch (ComplaintException e) {
      page.complain(e.getMessage());
    }
  }

  void splice(String tag, ShopUnits units) {
    ask(
        "splice",
        "How " + tag + " is spliced already",
        SpliceText.asked(units),
        typed -> spliced(tag, typed, units));
  }

  private void spliced(String tag, List<String> typed, ShopUnits units) {
    try {
      actions.splice(tag, SpliceText.read(typed, units), reply());
    } catch (ComplaintException e) {
      page.complain(e.getMessage());
    }
  }

  /** A question of one field; left empty it is left open. */
  private void askOne(String name, String words, Consumer<String> take) {
    ask(
        name,
        words,
        List.of(new AskStrip.Asked("", "")),
        typed -> {
          if (!typed.get(0).isEmpty()) {
            take.accept(typed.get(0));
          }
        });
  }

  private void ask(
      String name, String words, List<AskStrip.Asked> fields, Consumer<List<String>> take) {
    isOpen = true;
    AskStrip question = new AskStrip("rack." + name, words, fields, take, this::done);
    page.show(question);
    question.focusFirst();
  }

  private Reply reply() {
    return Reply.onEventThread(this::done, page::complain);
  }

  private void done() {
    close();
    page.goOn();
  }

  /** Takes an open question away. */
  void close() {
    isOpen = false;
    page.show(null);
  }
}
