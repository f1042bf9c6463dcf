package sagwright.workshop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.jdbi.v3.core.Handle;

/**
 * Brings a file to the version that this program knows: numbered scripts, all in one transaction,
 * counted in {@code PRAGMA user_version}. A copy is made before an older file is changed.
 */
final class Migrations {
  /** "SAGW", which marks the file as ours. */
  private static final int APPLICATION_ID = 0x53414757;

  /** This program's own, in the order in which they are applied. */
  static final List<String> SCRIPTS =
      List.of(
          "001-records.sql",
          "002-choosing.sql",
          "003-templates.sql",
          "004-grain.sql",
          "005-moved-runs.sql",
          "006-short-answers.sql");

  private final List<String> scripts;

  /**
   * @param scripts names of resources; the first takes an empty file to version 1
   */
  Migrations(List<String> scripts) {
    this.scripts = List.copyOf(scripts);
  }

  static Migrations ofThisProgram() {
    return new Migrations(SCRIPTS);
  }

  void bringUpToDate(Database database) throws WorkshopException {
    if (database.readPlainly(this::isUpToDate)) {
      return;
    }
    // nobody else writes meanwhile: a file that another program is making is seen whole
    int version = database.write(handle -> version(database.file(), handle));
    if (version > scripts.size()) {
      throw new WorkshopException(
          "the workshop "
              + database.file()
              + " was written by a newer Sagwright (its version is "
              + version
              + ", this program knows "
              + scripts.size()
              + "): use that one");
    }
    if (version > 0 && version < scripts.size()) {
      copyBefore(database, version);
    }
    database.write(
        handle -> {
          // another program may have been quicker
          for (int to = version(database.file(), handle) + 1; to <= scripts.size(); to++) {
            apply(database.file(), handle, to);
          }
          return null;
        });
  }

  private boolean isUpToDate(Connection connection) throws SQLException {
    return pragma(connection, "user_version") == scripts.size()
        && pragma(connection, "application_id") == APPLICATION_ID;
  }

  private static int version(Path file, Handle handle) throws WorkshopException {
    int version;
    boolean isOurs;
    try {
      version = pragma(handle.getConnection(), "user_version");
      isOurs = pragma(handle.getConnection(), "application_id") == APPLICATION_ID;
    } catch (SQLException e) {
      throw Faults.inWords(e, file);
    }
    boolean isEmpty = handle.select("select 1 from sqlite_master").mapToMap().findFirst().isEmpty();
    if (!isOurs && !(isEmpty && version == 0)) {
      throw new WorkshopException(
          "the file " + file + " is a database of another program, not a workshop");
    }
    return version;
  }

  private void apply(Path file, Handle handle, int version) throws WorkshopException {
    try {
      Database.script(
          handle,
          read(scripts.get(version - 1))
              + "\npragma application_id = "
              + APPLICATION_ID
              + ";\npragma user_version = "
              + version
              + ";\n");
    } catch (SQLException e) {
      throw Faults.inWords(e, file);
    }
  }

  private static void copyBefore(Database database, int version) throws WorkshopException {
    Path file = database.file();
    for (int n = 1; ; n++) {
      String suffix = ".version-" + version + (n == 1 ? "" : "-" + n);
      Path copy = file.resolveSibling(file.getFileName() + suffix);
      if (!Files.exists(copy)) {
        Backup.write(database, copy);
        return;
      }
    }
  }

  private static int pragma(Connection connection, String name) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("pragma " + name)) {
      row.next();
      return row.getInt(1);
    }
  }

  private static String read(String script) {
    try (InputStream in = Migrations.class.getResourceAsStream(script)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its script " + script);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
