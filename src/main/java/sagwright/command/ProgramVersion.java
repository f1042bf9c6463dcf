package sagwright.command;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest states. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return new String[] {"Sagwright " + (version == null ? "(not packaged)" : version)};
  }
}
