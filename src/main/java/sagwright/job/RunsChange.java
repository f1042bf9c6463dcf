package sagwright.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What other runs a grade rests on than the one before it. */
final class RunsChange {
  /** A run whose modulus differs by less, in percent, agrees with those before it. */
  private static final double AGREES_PERCENT = 0.05;

  private RunsChange() {}

  static List<String> between(Workshop workshop, List<Long> before, List<Long> now)
      throws WorkshopException {
    List<String> because = new ArrayList<>();
    double[] known = new double[before.size()];
    for (int i = 0; i < known.length; i++) {
      known[i] = modulusMPa(workshop.runs().run(before.get(i)));
    }
    OptionalDouble mean = Arrays.stream(known).filter(Double::isFinite).average();
    for (long id : now) {
      if (!before.contains(id)) {
        because.add(ofNewRun(workshop.runs().run(id), mean));
      }
    }
    List<String> gone = new ArrayList<>();
    for (long id : before) {
      Run run = workshop.runs().run(id);
      if (!now.contains(id) && run.isSetAside()) {
        because.add("run " + id + " is set aside: " + run.setAsideWhy());
      } else if (!now.contains(id)) {
        gone.add(String.valueOf(id));
      }
    }
    if (!gone.isEmpty()) {
      because.add(
          (gone.size() == 1 ? "run " : "runs ")
              + String.join(", ", gone)
              + (gone.size() == 1 ? " no longer counts" : " no longer count"));
    }
    return because;
  }

  private static String ofNewRun(Run run, OptionalDouble meanBefore) {
    double percent = 100 * (modulusMPa(run) / meanBefore.orElse(Double.NaN) - 1);
    if (!Double.isFinite(percent)) {
      return "run " + run.id() + " is new";
    }
    return Math.abs(percent) < AGREES_PERCENT
        ? "run " + run.id() + " agrees"
        : String.format(
            Locale.ROOT,
            "run %d is %.1f %% %s",
            run.id(),
            Math.abs(percent),
            percent < 0 ? "softer" : "stiffer");
  }

  /** NaN for a run without an answer. */
  private static double modulusMPa(Run run) {
    String answer = run.outcome().answer();
    Double modulus = answer == null ? null : JsonLine.parse(answer).number("modulusMPa");
    return modulus == null ? Double.NaN : modulus;
  }
}
