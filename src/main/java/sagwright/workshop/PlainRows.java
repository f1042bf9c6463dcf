package sagwright.workshop;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * The rows of a plain query, for what is read by the thousand: without Jdbi, which takes as long
 * again over each row as SQLite itself.
 */
final class PlainRows {
  private PlainRows() {}

  /** Takes a row; its columns by their places, for looking their names up takes longer. */
  interface Taker {
    void take(ResultSet row) throws SQLException, WorkshopException;
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
