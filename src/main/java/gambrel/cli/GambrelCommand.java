package gambrel.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program without a command, which only prints that one is needed. */
@Command(
    name = "gambrel",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Take-home statements and shrink summaries from a boning room's scale exports.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing for a person to do",
      "1:done, and something waits for a person",
      "2:bad usage, or a shop folder that cannot be read; nothing published",
      "3:another run holds the output folder",
      "4:failed half-way; the last published state stands"
    })
final class GambrelCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do: run, check or explain.");
  }
}
