package sagwright.screen.checks;

import java.awt.LayoutManager;
import sagwright.job.Signature;
import sagwright.screen.ComplaintException;

/** A card whose work is kept under a signature. */
abstract class SignedCard extends CheckCard {
  private static final long serialVersionUID = 1L;

  private final SignFields sign;

  SignedCard(String name, String title, Speech speech, LayoutManager layout) {
    super(name, title, speech, layout);
    this.sign = new SignFields(name);
  }

  /** The fields, to be put where the card wants them. */
  final SignFields sign() {
    return sign;
  }

  @Override
  final String control() {
    return "Keep";
  }

  @Override
  final void press() {
    try {
      keep(sign.read());
    } catch (ComplaintException e) {
      refused(e.getMessage());
    }
  }

  /** Says why a thing is not kept, and goes to the field that it is about. */
  @Override
  final void refused(String why) {
    say(why);
    focusOn(new ComplaintException(why).field());
  }

  /**
   * @param field as a complaint names it; empty for none
   */
  void focusOn(String field) {
    sign.focusOn(field);
  }

  /** Keeps what was made here. */
  abstract void keep(Signature signature) throws ComplaintException;

  @Override
  void show(ChecksView view) {
    sign.offer(view.initials());
  }
}
