package sagwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A published table among the test resources. */
public final class ReferenceTable {
  private ReferenceTable() {}

  /**
   * @param name below {@code /reference/data/}
   */
  public static List<CSVRecord> rows(String name) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/data/" + name);
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return format.parse(reader).getRecords();
    }
  }

  public static double[] column(String name, String column) throws IOException {
    return rows(name).stream().mapToDouble(row -> Double.parseDouble(row.get(column))).toArray();
  }
}
