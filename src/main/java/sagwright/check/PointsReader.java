package sagwright.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import sagwright.check.CalibrationPoint.Direction;

/**
 * Reads the points of a calibration from CSV: a header that names the three columns, in any order,
 * and a row a point. Lines that begin with {@code #} and empty lines are passed over.
 */
public final class PointsReader {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setTrim(true).get();
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?");
  private static final String DIRECTION = "direction";

  private final String appliedColumn;
  private final String readingColumn;
  private final DoubleUnaryOperator applied;

  private PointsReader(String appliedColumn, String readingColumn, DoubleUnaryOperator applied) {
    this.appliedColumn = appliedColumn;
    this.readingColumn = readingColumn;
    this.applied = applied;
  }

  /** Masses in g with converter counts: {@code massG,counts,direction}; the points are in N. */
  public static PointsReader ofMasses(LocalGravity gravity) {
    return new PointsReader("massG", "counts", gravity::loadN);
  }

  /** The same file with the points left in g, as they were typed. */
  public static PointsReader ofMassesInG() {
    return new PointsReader("massG", "counts", mass -> mass);
  }

  /** Blocks in mm with gauge steps: {@code lengthMm,steps,direction}; the points are in mm. */
  public static PointsReader ofBlocks() {
    return new PointsReader("lengthMm", "steps", length -> length);
  }

  /** A file that this reader reads back. */
  public String write(List<CalibrationPoint> points) {
    StringBuilder csv = new StringBuilder(wantedHeader()).append('\n');
    for (CalibrationPoint point : points) {
      csv.append(point.applied()).append(',').append(point.reading()).append(',');
      csv.append(point.direction() == Direction.UP ? "up" : "down").append('\n');
    }
    return csv.toString();
  }

  /** The points in the order of the file. */
  public List<CalibrationPoint> read(String csv) throws BadPointsException {
    List<CalibrationPoint> points = new ArrayList<>();
    long line = 1;
    try (CSVParser rows = CSVParser.parse(csv, FORMAT)) {
      List<String> header = null;
      for (CSVRecord row : rows) {
        line = rows.getCurrentLineNumber();
        if (header == null) {
          header = header(row, line);
        } else {
          points.add(point(new Row(header, row, line)));
        }
      }
      if (header == null) {
        throw new BadPointsException(1, "the header " + wantedHeader() + " is missing");
      }
      return points;
    } catch (IOException | UncheckedIOException e) {
      throw new BadPointsException(line, "this or the next line is no CSV (a stray quote?)");
    }
  }

  private List<String> header(CSVRecord row, long line) throws BadPointsException {
    List<String> names = row.toList();
    List<String> wanted = List.of(appliedColumn, readingColumn, DIRECTION);
    if (names.size() != wanted.size() || !names.containsAll(wanted)) {
      throw new BadPointsException(line, "the header must be " + wantedHeader());
    }
    return names;
  }

  private String wantedHeader() {
    return String.join(",", appliedColumn, readingColumn, DIRECTION);
  }

  private CalibrationPoint point(Row row) throws BadPointsException {
    if (row.cells.size() != row.header.size()) {
      throw row.bad("has " + row.cells.size() + " values, must have " + row.header.size());
    }
    double known = row.number(appliedColumn);
    if (known < 0) {
      throw row.bad(appliedColumn + " is " + row.cell(appliedColumn) + ", must be 0 or above");
    }
    return new CalibrationPoint(
        applied.applyAsDouble(known), row.number(readingColumn), row.direction());
  }

  /** A row with what it takes to name a fault in it. */
  private record Row(List<String> header, CSVRecord cells, long line) {
    String cell(String column) {
      return cells.get(header.indexOf(column));
    }

    double number(String column) throws BadPointsException {
      String cell = cell(column);
      double number = NUMBER.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
      if (!Double.isFinite(number)) {
        throw bad(column + " is " + shown(cell) + ", must be a number with a decimal point");
      }
      return number;
    }

    Direction direction() throws BadPointsException {
      String cell = cell(DIRECTION);
      return switch (cell) {
        case "up" -> Direction.UP;
        case "down" -> Direction.DOWN;
        default -> throw bad(DIRECTION + " is " + shown(cell) + ", must be up or down");
      };
    }

    BadPointsException bad(String problem) {
      return new BadPointsException(line, problem);
    }

    private static String shown(String cell) {
      String cut = cell.length() > 40 ? cell.substring(0, 40) + "…" : cell;
      return cell.isEmpty() ? "empty" : '"' + cut.replaceAll("\\p{Cntrl}", "?") + '"';
    }
  }
}
