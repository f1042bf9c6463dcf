package sagwright;

import sagwright.bench.ByteLine;
import sagwright.bench.LineLostException;
import sagwright.bench.LineOpener;
import sagwright.bench.practice.PlayerFaults;
import sagwright.bench.practice.PracticeClock;
import sagwright.bench.practice.SheetPlayer;
import sagwright.bench.serial.SerialLineOpener;
import sagwright.command.Benches;
import sagwright.command.Commands;
import sagwright.command.Console;
import sagwright.workshop.StoreAhead;

/** Starts the program: a command where one is named, else the window. */
public final class Sagwright {
  private Sagwright() {}

  public static void main(String[] args) {
    System.exit(run(Console.standard(), args));
  }

  /** Runs one command, the window where none is named, and gives its exit code. */
  public static int run(Console console, String... args) {
    if (Commands.workOnWorkshop(args)) {
      StoreAhead.load();
    }
    String[] command = args.length == 0 ? new String[] {"window"} : args;
    return new Commands(console, new RealBenches(), new WindowStart()).run(command);
  }

  /** Serial ports by jSerialComm, and the player of sheets. */
  private static final class RealBenches implements Benches {
    @Override
    public LineOpener port(String path, int baud) {
      return new SerialLineOpener(path, baud);
    }

    @Override
    public boolean play(PlayRequest request, ByteLine line)
        throws LineLostException, InterruptedException {
      PlayerFaults faults =
          new PlayerFaults(
              request.seed(),
              request.dropShare(),
              request.flipShare(),
              request.stallS(),
              request.restarts());
      PracticeClock clock = PracticeClock.faster(request.speed());
      return new SheetPlayer(request.samples(), request.calibration(), faults, clock).play(line);
    }
  }
}
