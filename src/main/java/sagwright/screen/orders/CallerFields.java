package sagwright.screen.orders;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.grade.Order;
import sagwright.screen.ComplaintException;
import sagwright.screen.theme.Form;

/** Number, whom it is for, wood, day and notes of an order. */
final class CallerFields extends JPanel {
  private static final long serialVersionUID = 1L;

  /** A day as people write it; which of two numbers is the month is never guessed. */
  private static final List<DateTimeFormatter> DAYS =
      List.of(
          DateTimeFormatter.ISO_LOCAL_DATE,
          DateTimeFormatter.ofPattern("d.M.uuuu", Locale.ROOT),
          new DateTimeFormatterBuilder()
              .parseCaseInsensitive()
              .appendPattern("d MMM uuuu")
              .toFormatter(Locale.ENGLISH));

  private final Form form;
  private final JTextField whoFor;
  private final JComboBox<String> species;
  private final JTextField promisedFor;
  private final JTextField number;
  private final JTextField notes;
  private transient Order known;

  CallerFields(Runnable changed) {
    super(new MigLayout("insets 0", "[grow,fill]", ""));
    form = new Form("caller", changed, 0);
    whoFor = form.field("who for", "");
    species = form.choice("wood", List.of(), true);
    species.setPrototypeDisplayValue("a wood"); // the longest name is no reason to be wider
    promisedFor = form.field("promised", "");
    promisedFor.putClientProperty("JTextField.placeholderText", "30.6.2027");
    notes = form.field("notes", "");
    number = form.field("number", "");
    add(form, "wmin 0");
  }

  /**
   * @param order null for a new one
   */
  void begin(OrdersView view, Order order) {
    known = order;
    species.setModel(
        new DefaultComboBoxModel<>(
            view.woods().stream().map(wood -> wood.name()).toArray(String[]::new)));
    species.setSelectedItem(order == null ? "" : text(order.species()));
    number.setText(order == null ? view.nextNumber() : order.number());
    number.setEnabled(order == null);
    promisedFor.setText(order == null ? "" : text(order.promisedFor()));
    whoFor.setText(order == null ? "" : whoFor(order));
    notes.setText(order == null ? "" : furtherNotes(order));
    whoFor.setCaretPosition(0); // so that its beginning is seen
    notes.setCaretPosition(0);
  }

  /** Goes to the field that a complaint is about; whether it is here. */
  boolean focusOn(String field) {
    return form.focusOn(field);
  }

  private static String text(Object value) {
    return value == null ? "" : value.toString();
  }

  /** The notes' first line says for whom. */
  static String whoFor(Order order) {
    return text(order.notes()).lines().findFirst().orElse("");
  }

  private static String furtherNotes(Order order) {
    return String.join(" ", text(order.notes()).lines().skip(1).toList());
  }

  String number() {
    return number.getText().trim();
  }

  /** Null for any wood. */
  String species() {
    Object typed = species.getEditor().getItem();
    String wood = text(typed).trim();
    return wood.isEmpty() ? null : wood;
  }

  /** Whom it is for, and on the lines behind it the notes; null where nothing is typed. */
  String notes() {
    String who = whoFor.getText().strip();
    String more = notes.getText().strip();
    if (known != null && who.equals(whoFor(known).strip()) && more.equals(furtherNotes(known))) {
      return known.notes();
    }
    String both = more.isEmpty() ? who : who + "\n" + more;
    return both.isBlank() ? null : both;
  }

  /** Null where no day is promised. */
  LocalDate promisedFor() throws ComplaintException {
    String typed = promisedFor.getText().strip();
    if (typed.isEmpty()) {
      return null;
    }
    for (DateTimeFormatter form : DAYS) {
      try {
        return LocalDate.parse(typed, form);
      } catch (DateTimeParseException e) {
        // another form, or none
      }
    }
    throw new ComplaintException("promised: a day as 2027-06-30 or 30.6.2027, not " + typed);
  }
}
