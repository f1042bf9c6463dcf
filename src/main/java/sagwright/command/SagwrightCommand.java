package sagwright.command;

import picocli.CommandLine.Command;

/** The program itself; its commands hang below it. */
@Command(
    name = "sagwright",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    description = "A bend bench for billiards cue shafts. With no command it opens the window.")
final class SagwrightCommand {}
