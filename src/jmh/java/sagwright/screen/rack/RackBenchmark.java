package sagwright.screen.rack;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;
import sagwright.wood.Grain;

/**
 * The rack's own list, filtered as it is typed: all the keys of one search, from the first letter
 * to an empty field again, on the event thread. Without a display; painting is not in it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Djava.awt.headless=true")
public class RackBenchmark {
  /** The keys that each call types, one after the other. */
  private static final List<String> KEYS =
      List.of("n", "ne", "nea", "near", "near ", "near s", "near se", "near set", "near", "");

  @Param({"10000"})
  private int blanks;

  /** By which column it is sorted, −1 for none: 0 words, 4 figures. */
  @Param({"-1", "0", "4"})
  private int sortedBy;

  private RackList list;

  /** Invented, always the same. */
  @Setup(Level.Trial)
  public void fill() throws InterruptedException, InvocationTargetException {
    Random random = new Random(1);
    List<RackView.Row> rows = new ArrayList<>();
    for (int i = 0; i < blanks; i++) {
      rows.add(row(i, random));
    }
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.LIGHT.install();
          list = new RackList(ShopUnits.METRIC, row -> {});
          list.show(rows);
          for (int i = 0; i <= sortedBy; i++) {
            list.sortByNext(1);
          }
        });
  }

  private static RackView.Row row(int i, Random random) {
    String tag = String.format(Locale.ROOT, "26-%05d", i);
    String stage = List.of("roughed", "near size", "planed").get(random.nextInt(3));
    String seasoning = List.of("settled", "6 days more", "weigh it").get(random.nextInt(3));
    return new RackView.Row(
        tag,
        "European ash",
        stage,
        400.0 + random.nextInt(60),
        3 + random.nextDouble(),
        10 + 3 * random.nextDouble(),
        "2026-03-02",
        "",
        new Grain(5.0 + random.nextInt(6), Grain.RunOut.STRAIGHT, null),
        seasoning,
        "",
        String.join(" ", tag, "european ash", stage, "free", "straight", seasoning));
  }

  /** Ten keys; a tenth of it is one. */
  @Benchmark
  public int tenKeys() throws InterruptedException, InvocationTargetException {
    int[] shown = new int[1];
    SwingUtilities.invokeAndWait(
        () -> {
          for (String typed : KEYS) {
            list.filter(typed);
            shown[0] += list.shown();
          }
        });
    return shown[0];
  }
}
