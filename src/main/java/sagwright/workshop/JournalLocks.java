package sagwright.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Who says that a run goes on, by a lock on a file of the run's own. A lock falls with the program
 * that holds it, however that ends.
 *
 * <p>On some systems a program that closes any channel on a file lets go of all its locks on that
 * file. Hence the file that is locked is not the one that is read; a file that this object has
 * locked is not opened again; and a channel on one that another object of this program has locked
 * is left open.
 */
final class JournalLocks {
  private final Set<Path> held = new HashSet<>();
  private final List<FileChannel> leftOpen = new ArrayList<>();

  /** The lock on one run. */
  final class Lock {
    private final Path file;
    private final FileChannel channel;

    private Lock(Path file, FileChannel channel) {
      this.file = file;
      this.channel = channel;
    }

    /** Lets go; a second call does nothing. */
    void release() {
      synchronized (JournalLocks.this) {
        held.remove(file);
        try {
          channel.close();
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
    }
  }

  /** Empty where this program or another holds it. */
  synchronized Optional<Lock> tryOn(Path file) throws IOException {
    if (held.contains(file)) {
      return Optional.empty();
    }
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        held.add(file);
        return Optional.of(new Lock(file, channel));
      }
      channel.close();
    } catch (OverlappingFileLockException e) {
      leftOpen.add(channel);
    }
    return Optional.empty();
  }
}
