package sagwright;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Another Java program, with this one's class path: one that may be killed. */
public final class ChildProgram {
  private ChildProgram() {}

  /**
   * Starts it; what it says on standard error comes out here.
   *
   * @param options of the virtual machine
   */
  public static Process start(List<String> options, String mainClass, List<String> args)
      throws IOException, URISyntaxException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.addAll(options);
    command.add("-cp");
    command.add(classPath());
    command.add(mainClass);
    command.addAll(args);
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  /** Of this program: where its class loader tells it, else what it was started with. */
  private static String classPath() throws URISyntaxException {
    if (ChildProgram.class.getClassLoader() instanceof URLClassLoader loader) {
      List<String> places = new ArrayList<>();
      for (URL url : loader.getURLs()) {
        places.add(Path.of(url.toURI()).toString());
      }
      return String.join(File.pathSeparator, places);
    }
    return System.getProperty("java.class.path");
  }
}
