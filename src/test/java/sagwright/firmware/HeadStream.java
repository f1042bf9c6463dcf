package sagwright.firmware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * All that the head sent: its readings, its replies, and what was neither. A line cut off by the
 * end of the simulation counts as nothing.
 */
record HeadStream(List<HeadLine> readings, List<String> replies, List<String> refused) {

  static HeadStream of(String text) {
    List<HeadLine> readings = new ArrayList<>();
    List<String> replies = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    for (int from = 0, to; (to = text.indexOf('\n', from)) >= 0; from = to + 1) {
      String line = text.substring(from, to);
      Optional<HeadLine> reading = HeadLine.read(line);
      if (reading.isPresent()) {
        readings.add(reading.get());
      } else if (line.startsWith("SAGWRIGHT,") || line.matches("-?\\d+(,\"[^\"]*\")?")) {
        replies.add(line);
      } else {
        refused.add(line);
      }
    }
    return new HeadStream(readings, replies, refused);
  }

  /** Microseconds from each reading to the next, across the wrap. */
  List<Long> stepsUs() {
    List<Long> steps = new ArrayList<>();
    for (int i = 1; i < readings.size(); i++) {
      steps.add(readings.get(i).timeUs() - readings.get(i - 1).timeUs() & 0xFFFFFFFFL);
    }
    return steps;
  }

  /** Readings that are missing by the count, before each reading. */
  List<Integer> missing() {
    List<Integer> missing = new ArrayList<>();
    missing.add(0);
    for (int i = 1; i < readings.size(); i++) {
      missing.add(readings.get(i).seq() - readings.get(i - 1).seq() - 1 & 0xFFFF);
    }
    return missing;
  }

  long withFlags(int flags) {
    return readings.stream().filter(reading -> reading.flags() == flags).count();
  }

  long withGauge() {
    return readings.stream().filter(reading -> reading.gaugeSteps().isPresent()).count();
  }

  /**
   * The gap of the unloading over the loading branch at half the greatest load, in percent of the
   * greatest gauge value; each branch as its straight line between a fifth and four fifths of the
   * load, for the shaft of the simulation is straight and a single reading is up to half a period
   * off.
   */
  double hysteresisPercent() {
    List<HeadLine> usable = readings.stream().filter(HeadLine::isUsable).toList();
    int peak = 0;
    double most = 0;
    for (int i = 0; i < usable.size(); i++) {
      peak = load(usable.get(i)) > load(usable.get(peak)) ? i : peak;
      most = Math.max(most, gauge(usable.get(i)));
    }
    double peakLoad = load(usable.get(peak));
    double up = gaugeAtHalf(usable.subList(0, peak), peakLoad);
    double down = gaugeAtHalf(usable.subList(peak, usable.size()), peakLoad);
    return 100 * (down - up) / most;
  }

  private static double gaugeAtHalf(List<HeadLine> branch, double peakLoad) {
    SimpleRegression line = new SimpleRegression();
    for (HeadLine reading : branch) {
      if (Math.abs(load(reading) - peakLoad / 2) < 0.3 * peakLoad) {
        line.addData(load(reading), gauge(reading));
      }
    }
    return line.predict(peakLoad / 2);
  }

  private static double load(HeadLine line) {
    return line.loadCounts().orElseThrow();
  }

  private static double gauge(HeadLine line) {
    return line.gaugeSteps().orElseThrow();
  }
}
