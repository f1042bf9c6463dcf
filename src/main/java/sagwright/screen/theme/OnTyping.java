package sagwright.screen.theme;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Runs something whenever a text is changed, by a person or by the program. */
public record OnTyping(Runnable run) implements DocumentListener {
  @Override
  public void insertUpdate(DocumentEvent e) {
    run.run();
  }

  @Override
  public void removeUpdate(DocumentEvent e) {
    run.run();
  }

  @Override
  public void changedUpdate(DocumentEvent e) {
    run.run();
  }
}
