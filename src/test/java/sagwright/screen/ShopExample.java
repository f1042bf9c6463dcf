package sagwright.screen;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.finish.ButtBore;
import sagwright.job.KeepSplice;
import sagwright.screen.bench.BenchActions;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.bench.BenchView;
import sagwright.screen.checks.ChecksExample;
import sagwright.screen.checks.ChecksView;
import sagwright.screen.choose.ChooseExample;
import sagwright.screen.choose.ChooseScreen;
import sagwright.screen.choose.ChooseView;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.orders.OrdersView;
import sagwright.screen.rack.BlankEntry;
import sagwright.screen.rack.RackActions;
import sagwright.screen.rack.RackScreen;
import sagwright.screen.rack.RackView;
import sagwright.screen.settings.SettingsActions;
import sagwright.screen.settings.SettingsScreen;
import sagwright.screen.settings.SettingsView;
import sagwright.screen.start.StartActions;
import sagwright.screen.start.StartScreen;
import sagwright.screen.theme.Theme;
import sagwright.wood.Grain;

/** An invented workshop for pictures and window tests: its screens do nothing by themselves. */
final class ShopExample {
  private static final List<String> STAGES =
      List.of("square", "roughed", "second turning", "near size", "planed", "finished cue");
  private static final List<String> SPECIES = List.of("European ash", "White ash", "Sugar maple");

  private ShopExample() {}

  static Shell shell(BenchView bench, RackView rack, OrdersView orders) {
    return shell(bench, rack, orders, ChooseExample.empty(), ChecksExample.empty());
  }

  /** All pages, in the rail's order. */
  static Shell shell(
      BenchView bench, RackView rack, OrdersView orders, ChooseView choose, ChecksView checks) {
    Shell shell = new Shell();
    shell.add(new BenchScreen(new Mailbox<>(bench), new IdleBench()));
    shell.add(new RackScreen(new Mailbox<>(rack), new IdleRack()));
    shell.add(new OrdersScreen(new Mailbox<>(orders), new OrdersExample.Idle()));
    shell.add(new ChooseScreen(new Mailbox<>(choose), new ChooseExample.Idle()));
    shell.add(ChecksExample.screen(checks));
    shell.addAtFoot(new SettingsScreen(new Mailbox<>(settings()), new IdleSettings()));
    return shell;
  }

  static Shell shellWithoutBlanks(String open) {
    RackView rack = new RackView(List.of(), null, SPECIES, STAGES, ShopUnits.METRIC, "");
    Shell shell = shell(BenchExample.empty(), rack, OrdersExample.none());
    shell.open(open);
    return shell;
  }

  static Shell startShell() {
    Shell shell = new Shell();
    shell.add(new StartScreen(Path.of("/home/maker/Sagwright/workshop.db"), new IdleStart()));
    shell.open("Start");
    return shell;
  }

  static RackView rack() {
    Random random = new Random(25);
    List<RackView.Row> rows = new ArrayList<>();
    rows.add(row("25-014", "European ash", "near size", 355.0, 3.212, 11.18, "2026-11-25", ""));
    for (int i = 13; i > 0; i--) {
      boolean tested = i % 4 != 0;
      rows.add(
          row(
              String.format("25-%03d", i),
              SPECIES.get(i % 3),
              STAGES.get(i % 5),
              350.0 + 10 * i,
              tested ? 2.4 + random.nextInt(1400) / 1000.0 : null,
              tested ? 10 + random.nextInt(400) / 100.0 : null,
              tested ? String.format("2026-11-%02d", 2 + i) : "",
              i == 7 ? "R-0004" : ""));
    }
    return new RackView(rows, record(), SPECIES, STAGES, ShopUnits.METRIC, "");
  }

  private static RackView.Row row(
      String tag,
      String species,
      String stage,
      Double massG,
      Double stiffnessNPerMm,
      Double modulusGPa,
      String tested,
      String promised) {
    int number = Integer.parseInt(tag.substring(3));
    Grain grain =
        number % 5 == 0
            ? Grain.UNSEEN
            : new Grain(5.0 + number % 6, Grain.RunOut.values()[number % 7 / 3], null);
    String seasoning = List.of("settled", "settled", "6 days more", "weigh it").get(number % 4);
    return new RackView.Row(
        tag,
        species,
        stage,
        massG,
        stiffnessNPerMm,
        modulusGPa,
        tested,
        promised,
        grain,
        seasoning,
        "",
        String.join(" ", tag, species, stage, promised, seasoning).toLowerCase(Locale.ROOT));
  }

  private static RackView.Opened record() {
    return new RackView.Opened(
        "25-014",
        "European ash, near size, 355 g, 11.2 % moist",
        "turned 87 days ago, settled; grain 9, straight",
        "",
        BenchExample.TAPER,
        new BlankEntry(
            "25-014",
            "European ash",
            "near size",
            SectionShape.ELLIPSE,
            1490.0,
            355.0,
            11.2,
            BenchExample.TAPER.stations().stream()
                .map(s -> new BlankEntry.Calipers(s.xMm(), s.depthMm(), null))
                .toList(),
            new Grain(9.0, Grain.RunOut.STRAIGHT, null),
            ""),
        List.of(
            event("3 Mar 2025", "entered", "sawn square, 46 × 46 mm", "lot 25, from one board"),
            event("4 Mar 2025", "weighed", "2210 g", "18.4 % moist"),
            event("2 Sep 2025", "roughed", "33 mm at the butt, 16 at the tip", ""),
            event("8 Jan 2026", "turned", "29.6 mm at the butt, 12.1 at the tip", "eight stations"),
            new RackView.Event(
                "11 Nov 2026", "tested", "3.05 ± 0.31 N/mm", "run 1, broken off: set aside", true),
            event(
                "11 Nov 2026",
                "tested",
                "3.209 ± 0.012 N/mm",
                "run 2; 11.17 ± 0.23 GPa; supports 100 and 1100 mm, turned 0°"),
            event(
                "25 Nov 2026",
                "tested",
                "3.212 ± 0.012 N/mm",
                "run 3; 11.18 ± 0.23 GPa; supports 100 and 1100 mm, turned 90°"),
            event(
                "25 Nov 2026",
                "graded",
                "meets R-0007, 99 in 100",
                "finished 2.080 ± 0.071 N/mm, cut from 8 mm, least spare 0.91 mm")));
  }

  private static RackView.Event event(String day, String what, String figures, String details) {
    return new RackView.Event(day, what, figures, details, false);
  }

  static SettingsView settings() {
    return new SettingsView(
        List.of("bench head 0042 on ttyUSB0", "ttyS0"),
        "bench head 0042 on ttyUSB0",
        Theme.style().palette().equals(Theme.DARK.palette()) ? Theme.DARK : Theme.LIGHT,
        ShopUnits.METRIC,
        95,
        List.of("supple", "easy", "middling", "firm", "stout"),
        "KM",
        false,
        ButtBore.USUAL,
        "/home/maker/Sagwright/workshop.db",
        "/home/maker/Sagwright/2026-03-02-workshop.db");
  }

  static Shell recordOpened(Shell shell) {
    ((JTextField) named(shell, "rack.filter")).postActionEvent();
    return shell;
  }

  /** The same for a blank that is looked for by its tag. */
  static Shell recordOpened(Shell shell, String tag) {
    type(shell, "rack.filter", tag);
    return recordOpened(shell);
  }

  static Shell blankTyped(Shell shell) {
    type(shell, "blank.tag", "25-015");
    ((JComboBox<?>) named(shell, "blank.species")).setSelectedItem("European ash");
    ((JComboBox<?>) named(shell, "blank.stage")).setSelectedItem("near size");
    type(shell, "blank.length", "58 5/8 in");
    type(shell, "blank.mass", "372");
    type(shell, "blank.moisture", "11.4");
    String[][] stations = {
      {"0", "12.10", "12.08"},
      {"400", "16.62", ""},
      {"800", "21.90", "21.87"},
      {"1485", "29.55", ""}
    };
    for (int i = 0; i < stations.length; i++) {
      for (int j = 0; j < 3; j++) {
        type(shell, "stations." + (i + 1) + "." + (j + 1), stations[i][j]);
      }
    }
    return shell;
  }

  /** As a caliper types at a pitch, one of them misread. */
  static Shell stationsAtAPitch(Shell shell) {
    type(shell, "blank.tag", "25-016");
    type(shell, "blank.length", "1490");
    type(shell, "blank.grain lines", "9");
    type(shell, "blank.looks", "a dark fleck at 900");
    type(shell, "blank.pitch", "150");
    double[] depths = {12.1, 13.92, 15.71, 17.6, 19.44, 22.26, 23.1, 24.9, 26.71};
    for (int i = 0; i < depths.length; i++) {
      type(shell, "stations." + (i + 1) + ".2", String.valueOf(depths[i]));
    }
    return shell;
  }

  static void type(Shell shell, String name, String text) {
    ((JTextField) named(shell, name)).setText(text);
  }

  static Component named(Container root, String name) {
    for (Component child : root.getComponents()) {
      if (name.equals(child.getName())) {
        return child;
      }
      Component found = child instanceof Container inner ? named(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Does nothing. */
  static class IdleBench implements BenchActions {
    @Override
    public void undo() {
      throw new AssertionError("nothing is to be taken back here");
    }

    @Override
    public void lay(String tag, Reply reply) {}

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
    public void guess(String typed, String initials, Reply reply) {}

    @Override
    public void makeSeriesOf(int runs) {}

    @Override
    public void lookBehind() {}

    @Override
    public void setUp(SetUp setUp) {}

    @Override
    public void keepBow(List<Rolled> rolled, Reply reply) {}

    @Override
    public void answer(Choice choice) {}
  }

  /** Does nothing. */
  static class IdleRack implements RackActions {
    @Override
    public void splice(String tag, KeepSplice.Measured splice, Reply reply) {}

    @Override
    public void open(String tag) {}

    @Override
    public void enter(BlankEntry blank, Reply reply) {}

    @Override
    public void measure(BlankEntry blank, Reply reply) {}

    @Override
    public void note(String tag, String words, Reply reply) {}

    @Override
    public void end(String tag, String why, Reply reply) {}

    @Override
    public void undo(Reply reply) {}

    @Override
    public void lay(String tag) {}
  }

  /** Does nothing. */
  static class IdleStart implements StartActions {
    @Override
    public void openWorkshop(Path file, Reply reply) {}

    @Override
    public void practise(Reply reply) {}

    @Override
    public void openExample(Consumer<String> progress, Reply reply) {}
  }

  /** Does nothing. */
  static class IdleSettings implements SettingsActions {
    @Override
    public void look() {}

    @Override
    public void listenTo(String port, Reply reply) {}

    @Override
    public void guessFirst(boolean on, Reply reply) {}

    @Override
    public void wear(Theme theme, Reply reply) {}

    @Override
    public void measureIn(ShopUnits units, Reply reply) {}

    @Override
    public void beSure(double percent, Reply reply) {}

    @Override
    public void call(List<String> words, Reply reply) {}

    @Override
    public void backUpTo(String file, Reply reply) {}

    @Override
    public void signAs(String initials, Reply reply) {}

    @Override
    public void takeBack(Consumer<String> say) {}

    @Override
    public void boreButts(ButtBore bore, Reply reply) {}
  }
}
