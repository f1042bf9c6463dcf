package sagwright.command;

import java.nio.file.Path;
import java.time.InstantSource;
import picocli.CommandLine.Option;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Which workshop a command works on. */
final class WorkshopOption {
  @Option(
      names = "--workshop",
      paramLabel = "FILE",
      description = "the workshop file (Sagwright/workshop.db in your home)")
  private Path file;

  /** The workshop, which must be there. */
  Workshop open() throws WorkshopException {
    return Workshop.open(path(), keeper());
  }

  /** The workshop; an empty one is made where there is none. */
  Workshop openOrCreate() throws WorkshopException {
    return Workshop.openOrCreate(path(), keeper());
  }

  private Path path() {
    return file == null ? Workshop.usualFile() : file;
  }

  private static Keeper keeper() {
    return new Keeper(InstantSource.system(), ProgramVersion.text());
  }
}
