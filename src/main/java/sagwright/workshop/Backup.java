package sagwright.workshop;

import java.nio.file.Files;
import java.nio.file.Path;

/** A whole copy of a workshop that is in use; copying the file itself would miss what is new. */
final class Backup {
  private Backup() {}

  /** Writes the copy and looks it through; a file that is there already is not touched. */
  static void write(Database database, Path copy) throws WorkshopException {
    if (Files.exists(copy)) {
      throw new WorkshopException("the file " + copy + " is there already");
    }
    database.read(handle -> handle.execute("vacuum into ?", copy.toString()));
    try (Database written = Database.open(copy, false)) {
      requireWhole(written);
    }
  }

  /** Looks every page through. */
  static void requireWhole(Database database) throws WorkshopException {
    String found =
        database.read(handle -> handle.select("pragma quick_check(1)").mapTo(String.class).first());
    if (!found.equals("ok")) {
      throw new WorkshopException(
          "the workshop "
              + database.file()
              + " is damaged: bring back a backup of it, and keep this file");
    }
  }
}
