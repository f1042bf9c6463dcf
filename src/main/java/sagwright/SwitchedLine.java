package sagwright;

import java.util.ArrayList;
import java.util.List;
import sagwright.bench.ByteLine;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.serial.FoundPortOpener;
import sagwright.bench.serial.PortDescription;
import sagwright.bench.serial.SerialPorts;
import sagwright.job.HeadPorts;

/** A serial line whose port can be changed while the program runs. Safe for all threads. */
final class SwitchedLine implements LineOpener, HeadPorts {
  private final int baud;
  private LineOpener opener;
  private String chosen;
  private ByteLine line;

  /**
   * @param first the port that is listened to until another one is chosen
   */
  SwitchedLine(LineOpener first, int baud) {
    this.baud = baud;
    this.opener = first;
    this.chosen = first.description();
  }

  @Override
  public synchronized String description() {
    return opener.description();
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    LineOpener now;
    synchronized (this) {
      now = opener;
    }
    ByteLine opened = now.open();
    synchronized (this) {
      line = opened;
    }
    return opened;
  }

  @Override
  public List<String> names() {
    List<String> names =
        new ArrayList<>(SerialPorts.list().stream().map(PortDescription::inWords).toList());
    synchronized (this) {
      if (!names.contains(chosen)) {
        names.add(0, chosen);
      }
    }
    return names;
  }

  @Override
  public synchronized String chosen() {
    return chosen;
  }

  @Override
  public void choose(String name) {
    SerialPorts.list().stream()
        .filter(port -> port.inWords().equals(name))
        .findFirst()
        .ifPresent(this::switchTo);
  }

  private void switchTo(PortDescription port) {
    ByteLine before;
    synchronized (this) {
      opener = new FoundPortOpener(port.identity(), baud);
      chosen = port.inWords();
      before = line;
      line = null;
    }
    if (before != null) {
      before.close(); // the session finds it lost, and opens the other one
    }
  }
}
