package sagwright.screen;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchView;
import sagwright.screen.bench.GuessExample;
import sagwright.screen.bench.Phase;
import sagwright.screen.checks.ChecksExample;
import sagwright.screen.checks.ChecksView;
import sagwright.screen.choose.ChooseExample;
import sagwright.screen.choose.ChooseView;
import sagwright.screen.theme.Theme;

/**
 * Paints every screen, without a display, in both themes and both sizes: {@code Pictures FOLDER
 * [NAME…]}. The pictures of docs/pictures are made by this.
 */
public final class Pictures {
  static final int[][] SIZES = {{1280, 800}, {1920, 1080}};

  private Pictures() {}

  public static void main(String[] args) throws Exception {
    File folder = new File(args[0]);
    List<String> wanted = List.of(args).subList(1, args.length);
    for (Theme theme : Theme.values()) {
      for (int[] size : SIZES) {
        for (Map.Entry<String, Supplier<Shell>> shell : shells().entrySet()) {
          if (wanted.isEmpty() || wanted.contains(shell.getKey())) {
            String name =
                String.format(
                    Locale.ROOT,
                    "%s-%s-%d.png",
                    shell.getKey(),
                    theme.name().toLowerCase(Locale.ROOT),
                    size[0]);
            paint(theme, shell.getValue(), size, new File(folder, name));
          }
        }
      }
    }
    System.exit(0); // the screens' timers keep the event thread alive
  }

  static Map<String, Supplier<Shell>> shells() {
    Map<String, Supplier<Shell>> shells = new LinkedHashMap<>();
    shells.put("bench", () -> bench(BenchExample.loading(12.45)));
    shells.put("bench-empty", () -> bench(BenchExample.empty()));
    shells.put("bench-ready", () -> bench(BenchExample.ready()));
    shells.put(
        "bench-letoff",
        () -> bench(BenchExample.in(BenchExample.loading(20.1), Phase.LET_OFF, "")));
    shells.put("bench-question", () -> bench(BenchExample.questioned()));
    shells.put("bench-handread", () -> pressing(bench(BenchExample.ready()), "typed h"));
    shells.put("bench-behind", () -> pressing(bench(BenchExample.questioned()), "typed w"));
    shells.put("bench-survey", () -> pressing(bench(BenchExample.loaded()), "typed s"));
    shells.put("bench-finished", () -> pressing(bench(BenchExample.loaded()), "typed f"));
    shells.put("bench-bow", () -> pressing(bench(BenchExample.ready()), "typed r"));
    shells.put(
        "bench-series",
        () -> bench(BenchExample.in(BenchExample.loaded(), Phase.TURN, "3 of 3: mark at 120°")));
    shells.put("bench-guess", () -> bench(GuessExample.awaited()));
    shells.put("bench-guessed", () -> bench(GuessExample.answered()));
    shells.put("bench-guessed-alone", () -> bench(GuessExample.answeredForNoOrder()));
    shells.put("bench-learning", () -> pressing(bench(GuessExample.answered()), "typed g"));
    shells.put("bench-beginner", () -> pressing(bench(GuessExample.beginner()), "typed g"));
    shells.put("rack", () -> opened(BenchExample.loading(12.45), "Rack"));
    shells.put(
        "rack-record", () -> ShopExample.recordOpened(opened(BenchExample.loading(12.45), "Rack")));
    shells.put(
        "rack-splice",
        () ->
            pressing(
                ShopExample.recordOpened(opened(BenchExample.loading(12.45), "Rack")), "typed p"));
    shells.put(
        "rack-new",
        () ->
            ShopExample.blankTyped(
                pressing(opened(BenchExample.empty(), "Rack"), "ctrl pressed N")));
    shells.put(
        "rack-pitch",
        () ->
            ShopExample.stationsAtAPitch(
                pressing(opened(BenchExample.empty(), "Rack"), "ctrl pressed N")));
    shells.put(
        "rack-weigh",
        () ->
            pressing(
                ShopExample.recordOpened(opened(BenchExample.loading(12.45), "Rack")), "typed w"));
    shells.put("rack-empty", () -> ShopExample.shellWithoutBlanks("Rack"));
    shells.put("orders", () -> opened(BenchExample.loading(12.45), "Orders"));
    shells.put(
        "orders-new",
        () ->
            OrdersExample.typed(
                pressing(opened(BenchExample.empty(), "Orders"), "ctrl pressed N")));
    shells.put("orders-plan", () -> orderOpened());
    shells.put(
        "orders-odd",
        () ->
            OrdersExample.odd(pressing(opened(BenchExample.empty(), "Orders"), "ctrl pressed N")));
    shells.put("orders-fittings", () -> orderOpened("pressed PAGE_DOWN"));
    shells.put("orders-places", () -> orderOpened("pressed PAGE_UP"));
    shells.put("orders-empty", () -> ShopExample.shellWithoutBlanks("Orders"));
    checks(shells);
    choose(shells);
    shells.put("example-bench", () -> livedIn("Bench"));
    shells.put("example-rack", () -> livedIn("Rack"));
    shells.put(
        "example-record", () -> ShopExample.recordOpened(livedIn("Rack"), LivedInShop.BLANK));
    shells.put("example-orders", () -> livedIn("Orders"));
    shells.put("example-choose", () -> livedIn("Choose"));
    shells.put(
        "example-choose-closely",
        () -> pressing(livedIn("Choose"), "typed 1", "typed 2", "typed 3", "typed 4", "typed c"));
    shells.put("example-choose-all", () -> pressing(livedIn("Choose"), "typed a"));
    shells.put("example-checks", () -> livedIn("Checks"));
    shells.put("example-checks-rod", () -> pressing(livedIn("Checks"), "typed r"));
    shells.put("settings", () -> opened(BenchExample.loading(12.45), "Settings"));
    shells.put("start", ShopExample::startShell);
    return shells;
  }

  private static void checks(Map<String, Supplier<Shell>> shells) {
    shells.put("checks", () -> checks(ChecksExample.inUse()));
    shells.put("checks-out", () -> checks(ChecksExample.out()));
    shells.put("checks-empty", () -> checks(ChecksExample.empty()));
    shells.put("checks-load", () -> pressing(checks(ChecksExample.inUse()), "typed l"));
    shells.put("checks-load-empty", () -> pressing(checks(ChecksExample.empty()), "typed l"));
    shells.put("checks-gauge", () -> pressing(checks(ChecksExample.inUse()), "typed g"));
    shells.put("checks-spring", () -> pressing(checks(ChecksExample.inUse()), "typed s"));
    shells.put("checks-frame", () -> pressing(checks(ChecksExample.out()), "typed f"));
    shells.put("checks-rod", () -> pressing(checks(ChecksExample.out()), "typed r"));
    shells.put("checks-health", () -> pressing(checks(ChecksExample.inUse()), "typed h"));
    shells.put("checks-file", () -> pressing(checks(ChecksExample.empty()), "typed i"));
  }

  private static Shell checks(ChecksView view) {
    Shell shell =
        ShopExample.shell(
            BenchExample.empty(),
            ShopExample.rack(),
            OrdersExample.orders(),
            ChooseExample.empty(),
            view);
    shell.open("Checks");
    return shell;
  }

  /** The example workshop as its own desks show it. */
  private static Shell livedIn(String word) {
    LivedInShop shop = LivedInShop.shop();
    Shell shell =
        ShopExample.shell(shop.bench(), shop.rack(), shop.orders(), shop.choose(), shop.checks());
    shell.mark("example");
    shell.open(word);
    return shell;
  }

  private static Shell bench(BenchView view) {
    return opened(view, "Bench");
  }

  private static Shell orderOpened(String... strokes) {
    return pressing(OrdersExample.opened(opened(BenchExample.empty(), "Orders")), strokes);
  }

  private static Shell opened(BenchView view, String word) {
    Shell shell = ShopExample.shell(view, ShopExample.rack(), OrdersExample.orders());
    shell.open(word);
    return shell;
  }

  private static void choose(Map<String, Supplier<Shell>> shells) {
    shells.put("choose", () -> choose(ChooseExample.choosing()));
    shells.put(
        "choose-four",
        () ->
            pressing(choose(ChooseExample.choosing()), "typed 1", "typed 2", "typed 4", "typed 5"));
    shells.put("choose-closely", () -> pressing(choose(ChooseExample.choosing()), "typed c"));
    shells.put(
        "choose-closely-four",
        () ->
            pressing(
                choose(ChooseExample.choosing()),
                "typed 1",
                "typed 2",
                "typed 4",
                "typed 5",
                "typed c"));
    shells.put("choose-all", () -> pressing(choose(ChooseExample.choosing()), "typed a"));
    shells.put("choose-weights", () -> pressing(choose(ChooseExample.choosing()), "typed w"));
    shells.put("choose-promised", () -> choose(ChooseExample.promised()));
    shells.put(
        "choose-thousands", () -> pressing(choose(ChooseExample.thousands()), "ctrl pressed DOWN"));
    shells.put("choose-none", () -> choose(ChooseExample.noneServes()));
    shells.put("choose-empty", () -> choose(ChooseExample.empty()));
  }

  private static Shell choose(ChooseView view) {
    Shell shell =
        ShopExample.shell(
            BenchExample.empty(),
            ShopExample.rack(),
            OrdersExample.orders(),
            view,
            ChecksExample.empty());
    shell.open("Choose");
    return shell;
  }

  /** Does what keys do on the open page. */
  private static Shell pressing(Shell shell, String... strokes) {
    Page page = shell.openPage();
    for (String stroke : strokes) {
      Object name =
          page.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(stroke));
      page.getActionMap().get(name).actionPerformed(new ActionEvent(page, 0, stroke));
    }
    return shell;
  }

  private static void paint(Theme theme, Supplier<Shell> make, int[] size, File file)
      throws InterruptedException, InvocationTargetException, IOException {
    BufferedImage[] image = new BufferedImage[1];
    SwingUtilities.invokeAndWait(
        () -> {
          theme.install();
          Shell shell = laidOut(make, size);
          image[0] = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image[0].createGraphics();
          g.setRenderingHint(
              RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
          RepaintManager.currentManager(shell).setDoubleBufferingEnabled(false);
          shell.paint(g);
          g.dispose();
        });
    ImageIO.write(image[0], "png", file);
  }

  /** On the event thread: a shell as it stands in a window of this size. */
  static Shell laidOut(Supplier<Shell> make, int[] size) {
    Shell shell = make.get();
    shell.setSize(size[0], size[1]);
    shell.addNotify();
    shell.zoomToSize();
    layOut(shell);
    return shell;
  }

  private static void layOut(Component component) {
    component.doLayout();
    if (component instanceof Container container) {
      for (Component child : container.getComponents()) {
        layOut(child);
      }
    }
  }
}
