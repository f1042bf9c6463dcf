package sagwright.bench.serial;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;

/** Why a port could not be opened and what to do about it, in one line for people. */
final class OpeningFailure {
  /** Error numbers of Linux and macOS (errno.h) that mean one thing on both. */
  private static final int NO_RIGHTS = 13;

  /** "Not found" of a path that is there: seen where this very program has it open already. */
  private static final int OPEN_IN_THIS_PROGRAM = 2;

  private static final int BUSY = 16;
  private static final int WOULD_BLOCK_LINUX = 11;
  private static final int WOULD_BLOCK_MACOS = 35;

  /** Windows system error codes (winerror.h). */
  private static final int WINDOWS_FILE_NOT_FOUND = 2;

  private static final int WINDOWS_ACCESS_DENIED = 5;

  private OpeningFailure() {}

  static String nothingThere(String path) {
    return "there is no port " + path + ": is the bench head plugged in, and is this its port?";
  }

  /**
   * @param errorCode as the system gave it when the port was opened
   * @param system as in the property os.name
   */
  static String inWords(String path, int errorCode, String system) {
    boolean windows = system.toLowerCase(Locale.ROOT).startsWith("windows");
    if (windows ? errorCode == WINDOWS_FILE_NOT_FOUND : !isThere(path)) {
      return nothingThere(path);
    }
    if (!windows && errorCode == NO_RIGHTS) {
      return "no rights on the port "
          + path
          + ": run \"sudo usermod -a -G dialout $USER\" once, then log out and in again"
          + " (the group is called uucp on some systems)";
    }
    if (windows ? errorCode == WINDOWS_ACCESS_DENIED : isBusy(errorCode)) {
      return "the port " + path + " is in use by another program: close that one first";
    }
    return "the port "
        + path
        + " does not open (system error "
        + errorCode
        + "): close other programs that may use it, or plug it out and in";
  }

  private static boolean isBusy(int errorCode) {
    return errorCode == OPEN_IN_THIS_PROGRAM
        || errorCode == BUSY
        || errorCode == WOULD_BLOCK_LINUX
        || errorCode == WOULD_BLOCK_MACOS;
  }

  private static boolean isThere(String path) {
    try {
      return Files.exists(Path.of(path));
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
