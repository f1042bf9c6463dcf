package sagwright;

import java.util.ArrayList;
import java.util.List;
import sagwright.bench.ByteLine;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.serial.FoundPortOpener;
import sagwright.bench.serial.PortDescription;
import sagwright.bench.serial.PortIdentity;
import sagwright.bench.serial.SerialLineOpener;
import sagwright.bench.serial.SerialPorts;
import sagwright.job.HeadPorts;

/** A serial line whose port can be changed while the program runs. Safe for all threads. */
final class SwitchedLine implements LineOpener, HeadPorts {
  private final int baud;
  private LineOpener opener;
  private String chosen;
  private String asText;
  private ByteLine line;

  private SwitchedLine(LineOpener first, String asText, int baud) {
    this.baud = baud;
    this.opener = first;
    this.chosen = first.description();
    this.asText = asText;
  }

  /** On a port by its path. */
  static SwitchedLine at(String path, int baud) {
    return new SwitchedLine(
        new SerialLineOpener(path, baud), SerialPorts.identityAt(path).asText(), baud);
  }

  /**
   * On the port that was chosen last.
   *
   * @param asText as {@link #asText} gave it; empty where none was chosen yet
   */
  static SwitchedLine remembered(String asText, int baud) {
    LineOpener opener =
        PortIdentity.fromText(asText)
            .<LineOpener>map(identity -> new FoundPortOpener(identity, baud))
            .orElseGet(NoPortOpener::new);
    return new SwitchedLine(opener, asText, baud);
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
  public synchronized String asText() {
    return asText;
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
      asText = port.identity().asText();
      before = line;
      line = null;
    }
    if (before != null) {
      before.close(); // the session finds it lost, and opens the other one
    }
  }
}
