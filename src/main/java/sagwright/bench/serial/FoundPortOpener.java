package sagwright.bench.serial;

import sagwright.bench.ByteLine;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;

/**
 * Opens a bench head wherever it is plugged in today: by what it is, where that tells it from all
 * others, else at its path.
 */
public final class FoundPortOpener implements LineOpener {
  private final PortIdentity identity;
  private final int baud;

  public FoundPortOpener(PortIdentity identity, int baud) {
    this.identity = identity;
    this.baud = baud;
  }

  @Override
  public String description() {
    return identity.path();
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    return new SerialLineOpener(pathNow(), baud).open();
  }

  private String pathNow() throws LineNotOpenedException {
    if (!identity.isUsb()) {
      return identity.path();
    }
    return identity
        .findAmong(SerialPorts.list())
        .map(PortDescription::path)
        .orElseThrow(
            () ->
                new LineNotOpenedException(
                    "the bench head that was at "
                        + identity.path()
                        + " is not plugged in: plug it in, or choose its port anew"));
  }
}
