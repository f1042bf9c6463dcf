package sagwright.bench;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/** Writes down what a reader tells, for tests to hold against what was sent. */
final class Heard implements WireListener {
  final List<Reading> readings = new ArrayList<>();
  final List<Long> micros = new ArrayList<>();
  final List<Refusal> refusals = new ArrayList<>();
  final List<String> refusedLines = new ArrayList<>();
  final List<Integer> gaps = new ArrayList<>();
  final List<HeadAnswer> answers = new ArrayList<>();
  final ByteArrayOutputStream raw = new ByteArrayOutputStream();
  int restarts;

  @Override
  public void raw(byte[] bytes) {
    raw.writeBytes(bytes);
  }

  @Override
  public void reading(Reading reading, long at) {
    readings.add(reading);
    micros.add(at);
  }

  @Override
  public void gap(int missing) {
    gaps.add(missing);
  }

  @Override
  public void restarted() {
    restarts++;
  }

  @Override
  public void refused(Refusal why, String line) {
    refusals.add(why);
    refusedLines.add(line);
  }

  @Override
  public void answered(HeadAnswer answer) {
    answers.add(answer);
  }
}
