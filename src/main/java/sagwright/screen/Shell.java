package sagwright.screen;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import sagwright.screen.theme.Keys;
import sagwright.screen.theme.Zoom;

/**
 * What fills the window: the rail and one open page. F1, F2 … open the pages in the rail's order.
 */
public final class Shell extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Settings keep their key when a screen is added. */
  private static final int SETTINGS_KEY = KeyEvent.VK_F9;

  private final Rail rail = new Rail();
  private final CardLayout cards = new CardLayout();
  private final JPanel pages = new JPanel(cards);
  private final Map<String, Page> byWord = new LinkedHashMap<>();
  private final Map<String, RailEntry> entries = new LinkedHashMap<>();
  private final Map<String, Runnable> whenOpened = new LinkedHashMap<>();
  private final transient Map<String, Supplier<Page>> anew = new HashMap<>();
  private Page open;

  public Shell() {
    super(new BorderLayout());
    add(rail, BorderLayout.LINE_START);
    add(pages, BorderLayout.CENTER);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            zoomToSize();
          }
        });
  }

  /** The next entry of the rail. */
  public void add(Page page) {
    enter(page, KeyEvent.VK_F1 + byWord.size(), false);
  }

  /** The entry at the rail's foot. */
  public void addAtFoot(Page page) {
    enter(page, SETTINGS_KEY, true);
  }

  private void enter(Page page, int keyCode, boolean atFoot) {
    RailEntry entry = new RailEntry(page.word(), KeyEvent.getKeyText(keyCode), atFoot);
    entry.addActionListener(e -> open(page.word()));
    byWord.put(page.word(), page);
    entries.put(page.word(), entry);
    rail.add(entry);
    pages.add(page, page.word());
    Keys.bind(
        this,
        WHEN_IN_FOCUSED_WINDOW,
        KeyStroke.getKeyStroke(keyCode, 0),
        page.word(),
        () -> open(page.word()));
  }

  /** Opens a page by the word of the rail. */
  public void open(String word) {
    Page page = byWord.get(word);
    if (page == null) {
      throw new IllegalArgumentException("no such page: " + word);
    }
    if (page.equals(open)) {
      return;
    }
    if (open != null) {
      open.left();
    }
    Supplier<Page> maker = page.holdsTyping() ? null : anew.remove(word);
    if (maker != null) {
      pages.remove(page);
      page = maker.get();
      byWord.put(word, page);
      pages.add(page, word);
      zoomToSize();
    }
    open = page;
    whenOpened.getOrDefault(word, () -> {}).run();
    rail.open(entries.get(word));
    cards.show(pages, word);
    page.opened();
  }

  /** A word that stands on the rail beside every page, as that nothing here is real. */
  public void mark(String word) {
    rail.mark(word);
  }

  /**
   * Makes a page anew the next time it is opened with nothing half typed on it.
   *
   * @param maker of a page with the same word
   */
  public void makeAnew(String word, Supplier<Page> maker) {
    anew.put(word, maker);
  }

  /** What is to be done each time that a page comes into view: its records are read anew. */
  public void whenOpened(String word, Runnable run) {
    whenOpened.put(word, run);
  }

  public Page openPage() {
    return open;
  }

  /** The window goes: the open page is left. */
  void closing() {
    if (open != null) {
      open.left();
    }
  }

  /** Brings everything to the zoom that the present size asks for. */
  void zoomToSize() {
    if (getWidth() > 0 && getHeight() > 0) {
      double zoom = Zoom.of(getWidth(), getHeight());
      for (JComponent part : new JComponent[] {rail, pages}) {
        Zoom.apply(part, zoom);
      }
      revalidate();
    }
  }
}
