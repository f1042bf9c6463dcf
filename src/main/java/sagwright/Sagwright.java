package sagwright;

import sagwright.command.Commands;
import sagwright.command.Console;

/** Starts the program: a command where one is named, else the window. */
public final class Sagwright {
  private Sagwright() {}

  public static void main(String[] args) {
    System.exit(new Commands(Console.standard()).run(args));
  }
}
