package sagwright.screen.theme;

import java.util.List;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/**
 * Lets what a choice offers go by what is typed in it when its list is opened.
 *
 * @param choice that may be typed into
 * @param offered the list's words in their order, given what is typed
 */
public record Offering(JComboBox<String> choice, Offered offered) implements PopupMenuListener {
  /** What is offered for what is typed. */
  public interface Offered {
    List<String> to(String typed);
  }

  /** Adds it to a choice. */
  public static void to(JComboBox<String> choice, Offered offered) {
    choice.addPopupMenuListener(new Offering(choice, offered));
  }

  @Override
  public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
    String typed = String.valueOf(choice.getEditor().getItem());
    DefaultComboBoxModel<String> model = new DefaultComboBoxModel<>();
    model.addAll(offered.to(typed));
    model.setSelectedItem(typed); // what is typed stays
    choice.setModel(model);
  }

  @Override
  public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
    // it is offered anew when it is opened again
  }

  @Override
  public void popupMenuCanceled(PopupMenuEvent e) {
    // the same
  }
}
