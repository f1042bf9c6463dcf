package sagwright.workshop;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import sagwright.bench.LineJournal;

/**
 * The bytes of one run on their way to disk. {@link #append} never waits: a thread of the journal's
 * own, "journal", writes what came and forces it to disk within a twentieth of a second.
 */
public final class RunJournal implements LineJournal, AutoCloseable {
  /** Twice as often as the tenth of a second that may be lost at a power cut. */
  private static final Duration FORCE_WITHIN = Duration.ofMillis(50);

  /** A disk that takes longer than this over a few bytes does not work. */
  private static final Duration STOP_WITHIN = Duration.ofSeconds(20);

  private static final byte[] NOTHING = {};

  private final long runId;
  private final FileChannel file;
  private final JournalLocks.Lock lock;
  private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>();
  private final Thread writer;
  private volatile IOException failure;
  private volatile boolean stopping;

  /**
   * @param file null for a run that takes no more bytes
   */
  RunJournal(long runId, FileChannel file, JournalLocks.Lock lock) {
    this.runId = runId;
    this.file = file;
    this.lock = lock;
    this.writer = new Thread(this::writeUntilStopped, "journal");
    writer.setDaemon(true);
    if (file == null) {
      stopping = true;
    } else {
      writer.start();
    }
  }

  public long runId() {
    return runId;
  }

  @Override
  public void append(byte[] raw) throws IOException {
    if (failure != null) {
      throw new IOException("the run could not be kept: " + inWords(failure), failure);
    }
    if (stopping) {
      throw new IOException("the run is over");
    }
    waiting.add(raw);
  }

  private void writeUntilStopped() {
    try (file) {
      boolean isDirty = false;
      long forceAtNanos = 0;
      while (!stopping || !waiting.isEmpty()) {
        byte[] next = waiting.poll(FORCE_WITHIN.toNanos() / 5, TimeUnit.NANOSECONDS);
        if (next != null) {
          if (!isDirty) {
            isDirty = true;
            forceAtNanos = System.nanoTime() + FORCE_WITHIN.toNanos();
          }
          writeWhole(ByteBuffer.wrap(next));
        }
        if (isDirty && System.nanoTime() - forceAtNanos >= 0) {
          file.force(false);
          isDirty = false;
        }
      }
      file.force(true);
    } catch (IOException e) {
      failure = e;
    } catch (InterruptedException e) {
      failure = new IOException("the journal was interrupted", e);
      Thread.currentThread().interrupt();
    }
  }

  private void writeWhole(ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      file.write(bytes);
    }
  }

  /** Takes no more; what was given is on disk when this returns, or it could not be kept. */
  void stopWriting() throws WorkshopException {
    stopping = true;
    waiting.add(NOTHING); // it need not wait for more
    try {
      writer.join(STOP_WITHIN.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (writer.isAlive()) {
      throw new WorkshopException("the disk takes the journal of run " + runId + " too slowly");
    }
  }

  /**
   * Lets go of the run. One that was not closed by {@link Runs#close} stays as it is, to be closed
   * later.
   */
  @Override
  public void close() {
    stopping = true;
    try {
      writer.join(STOP_WITHIN.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    lock.release();
  }

  static String inWords(IOException e) {
    String said = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("no space") || said.contains("not enough space") || said.contains("quota")) {
      return "the disk is full";
    }
    if (said.contains("read-only") || e instanceof java.nio.file.AccessDeniedException) {
      return "there is no right to write there";
    }
    return "the disk reports a fault";
  }
}
