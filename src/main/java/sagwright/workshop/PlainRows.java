package sagwright.workshop;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;

/**
 * The rows of a plain query, for what is read by the thousand or as a command starts: without Jdbi,
 * which takes as long again over each row as SQLite itself, and a quarter of a second to be loaded.
 */
final class PlainRows {
  private PlainRows() {}

  /** Takes a row; its columns by their places, for looking their names up takes longer. */
  interface Taker {
    void take(ResultSet row) throws SQLException, WorkshopException;
  }

  /** What a row says. */
  interface Reader<T> {
    T read(ResultSet row) throws SQLException;
  }

  /** The first row that a query has for a text in the place of its question mark. */
  static <T> Optional<T> first(Connection connection, String select, String text, Reader<T> reader)
      throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(select)) {
      statement.setString(1, text);
      try (ResultSet row = statement.executeQuery()) {
        return row.next() ? Optional.of(reader.read(row)) : Optional.empty();
      }
    }
  }

  /** One row after the other, in the query's order. */
  static void each(Connection connection, String select, Taker taker)
      throws SQLException, WorkshopException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(select)) {
      while (row.next()) {
        taker.take(row);
      }
    }
  }
}
