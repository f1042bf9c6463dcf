package sagwright.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import sagwright.grade.GradedForecast;
import sagwright.uncertainty.Warning;

/**
 * Answers about many blanks as JSON, an object a line, as {@link JsonLine} would write them one by
 * one. Not for two threads at once.
 */
public final class AnswerLines {
  private static final int USUAL_LINE = 800;

  private final CharArrayWriter text;
  private final JsonGenerator json;
  private final ForecastAnswer forecasts;

  /**
   * @param lines about so many
   */
  public AnswerLines(int lines) {
    text = new CharArrayWriter(lines * USUAL_LINE);
    try {
      json = JsonLine.FACTORY.createGenerator(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    forecasts = new ForecastAnswer(json);
  }

  /**
   * Adds the answer of docs/contract.md, section 5, without the first bending frequency.
   *
   * @param ofBlank warnings of the blank's own evaluation
   */
  public void addRanked(
      String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    add(tag, graded, assumed, ofBlank, false);
  }

  /** The same with the frequency. */
  void addForecast(String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    add(tag, graded, assumed, ofBlank, true);
  }

  private void add(
      String tag,
      GradedForecast graded,
      List<String> assumed,
      List<Warning> ofBlank,
      boolean withFrequency) {
    try {
      forecasts.write(tag, graded, assumed, ofBlank, withFrequency);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Adds a blank that cannot serve: docs/contract.md, section 7. */
  public void addCannot(String tag, String why) {
    try {
      json.writeStartObject();
      json.writeStringField("tag", tag);
      json.writeStringField("cannot", why);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Prints all lines, each with its end. */
  public void printTo(PrintWriter out) {
    flush();
    try {
      text.writeTo(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    out.println();
  }

  /** All lines, without an end after the last one. */
  @Override
  public String toString() {
    flush();
    return text.toString();
  }

  private void flush() {
    try {
      json.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
