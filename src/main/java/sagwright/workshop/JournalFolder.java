package sagwright.workshop;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;

/**
 * Where the journals of runs lie while the runs go on: a folder beside the workshop file, for each
 * run its bytes and a file that is locked as long as the run goes on.
 */
final class JournalFolder {
  private static final Pattern NAME = Pattern.compile("run-(\\d{1,18})\\.(wire|lock)");

  private final Path folder;
  private final JournalLocks locks = new JournalLocks();

  JournalFolder(Path workshop) {
    this.folder = workshop.resolveSibling(workshop.getFileName() + "-runs");
  }

  /** A new journal; its name is on disk when this returns. */
  RunJournal create(long runId) throws WorkshopException {
    try {
      Files.createDirectories(folder);
      JournalLocks.Lock lock =
          locks
              .tryOn(lockFile(runId))
              .orElseThrow(
                  () ->
                      new WorkshopException("another program writes the journal of run " + runId));
      try {
        FileChannel bytes =
            FileChannel.open(
                bytesFile(runId), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        bytes.force(true);
        forceFolder();
        return new RunJournal(runId, bytes, lock);
      } catch (IOException | RuntimeException e) {
        lock.release();
        throw e;
      }
    } catch (IOException e) {
      throw new WorkshopException(
          "the journal of a run cannot be kept in " + folder + ": " + RunJournal.inWords(e), e);
    }
  }

  /** Whether a run goes on, in this program or in another. */
  boolean isGoingOn(long runId) throws WorkshopException {
    Optional<RunJournal> journal = take(runId);
    journal.ifPresent(RunJournal::close);
    return journal.isEmpty();
  }

  /** The journal of a run that does not go on, to close it by; empty where the run goes on. */
  Optional<RunJournal> take(long runId) throws WorkshopException {
    try {
      Files.createDirectories(folder);
      return locks.tryOn(lockFile(runId)).map(lock -> new RunJournal(runId, null, lock));
    } catch (IOException e) {
      throw new WorkshopException(
          "the journal of run " + runId + " cannot be read: " + RunJournal.inWords(e), e);
    }
  }

  /** What has come so far; nothing where the run was cut off before its first byte. */
  byte[] read(long runId) throws WorkshopException {
    try {
      return Files.readAllBytes(bytesFile(runId));
    } catch (NoSuchFileException e) {
      return new byte[0];
    } catch (IOException e) {
      throw new WorkshopException(
          "the journal of run " + runId + " cannot be read: " + RunJournal.inWords(e), e);
    }
  }

  /** What has come so far in gzip's format. */
  byte[] packed(long runId) throws WorkshopException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(read(runId));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }

  /** Takes away the files of a run that is closed; what cannot be taken away does no harm. */
  void delete(long runId) {
    for (Path file : new Path[] {bytesFile(runId), lockFile(runId)}) {
      if (!file.toFile().delete()) {
        file.toFile().deleteOnExit();
      }
    }
  }

  /**
   * Takes away what a crash left behind a run that had just been closed.
   *
   * @param runIds runs that are not closed; a run that goes on is left alone in any case
   */
  void deleteAllBut(List<Long> runIds) throws WorkshopException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    List<Path> files;
    try (Stream<Path> entries = Files.list(folder)) {
      files = entries.toList();
    } catch (IOException e) {
      throw new WorkshopException("the folder " + folder + " cannot be read", e);
    }
    for (Path file : files) {
      Matcher name = NAME.matcher(file.getFileName().toString());
      if (name.matches() && !runIds.contains(Long.valueOf(name.group(1)))) {
        long runId = Long.parseLong(name.group(1));
        Optional<RunJournal> journal = take(runId);
        if (journal.isPresent()) {
          journal.get().close();
          delete(runId);
        }
      }
    }
  }

  private Path bytesFile(long runId) {
    return folder.resolve("run-" + runId + ".wire");
  }

  private Path lockFile(long runId) {
    return folder.resolve("run-" + runId + ".lock");
  }

  private void forceFolder() {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // not every system lets a folder be forced; those keep its names themselves
      return;
    }
  }
}
