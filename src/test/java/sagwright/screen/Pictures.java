package sagwright.screen;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
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
import javax.swing.SwingUtilities;
import sagwright.screen.bench.BenchActions;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.bench.BenchView;
import sagwright.screen.bench.Phase;
import sagwright.screen.theme.Theme;

/**
 * Paints every screen, without a display, in both themes and both sizes: {@code Pictures FOLDER
 * [NAME…]}. The pictures of docs/pictures are made by this.
 */
public final class Pictures {
  private static final int[][] SIZES = {{1280, 800}, {1920, 1080}};

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

  private static Map<String, Supplier<Shell>> shells() {
    Map<String, Supplier<Shell>> shells = new LinkedHashMap<>();
    shells.put("bench", () -> bench(BenchExample.loading(12.45)));
    shells.put("bench-empty", () -> bench(BenchExample.empty()));
    shells.put("bench-ready", () -> bench(BenchExample.ready()));
    shells.put(
        "bench-letoff",
        () -> bench(BenchExample.in(BenchExample.loading(20.1), Phase.LET_OFF, "")));
    shells.put("bench-question", () -> bench(BenchExample.questioned()));
    return shells;
  }

  private static Shell bench(BenchView view) {
    Shell shell = new Shell();
    shell.add(new BenchScreen(new Mailbox<>(view), NO_BENCH));
    shell.open("Bench");
    return shell;
  }

  private static void paint(Theme theme, Supplier<Shell> make, int[] size, File file)
      throws InterruptedException, InvocationTargetException, IOException {
    BufferedImage[] image = new BufferedImage[1];
    SwingUtilities.invokeAndWait(
        () -> {
          theme.install();
          Shell shell = make.get();
          shell.setSize(size[0], size[1]);
          shell.addNotify();
          shell.zoomToSize();
          layOut(shell);
          image[0] = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image[0].createGraphics();
          g.setRenderingHint(
              RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
          g.setRenderingHint(
              RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
          shell.printAll(g);
          g.dispose();
        });
    ImageIO.write(image[0], "png", file);
  }

  private static void layOut(Component component) {
    component.doLayout();
    if (component instanceof Container container) {
      for (Component child : container.getComponents()) {
        layOut(child);
      }
    }
  }

  private static final BenchActions NO_BENCH =
      new BenchActions() {
        @Override
        public void lay(String tag) {}

        @Override
        public void tryFor(String order) {}

        @Override
        public void test() {}

        @Override
        public void breakOff() {}

        @Override
        public void turnTo(double degrees) {}

        @Override
        public void keepHandRead(HandRead read, Reply reply) {}

        @Override
        public void answer(Choice choice) {}
      };
}
