package sagwright.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest states. */
public final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Sagwright " + text()};
  }

  /** As the jar states it. */
  public static String text() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return version == null ? "(not packaged)" : version;
  }
}
