package gambrel.cli;

import gambrel.night.Documents;
import java.util.function.BooleanSupplier;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program without a command, which only prints that one is needed. */
@Command(
    name = "gambrel",
    mixinStandardHelpOptions = true,
    versionProvider = GambrelCommand.Version.class,
    description = "Take-home statements and shrink summaries from a boning room's scale exports.",
    subcommands = {
      RunCommand.class,
      CheckCommand.class,
      ExplainCommand.class,
      SendCommand.class,
      CutsCommand.class,
      StartCommand.class,
      GenerateCompletion.class
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing for a person to do",
      "1:done, and something waits for a person",
      "2:bad usage, or a shop folder that cannot be read; nothing published",
      "3:another run holds the output folder",
      "4:failed half-way; the last published state stands, or the next run completes the new one"
    })
final class GambrelCommand implements Runnable {
  @Spec private CommandSpec spec;

  /** Makes a shop's documents. */
  final Documents.Maker maker;

  /** Whether standard error is a terminal. */
  final BooleanSupplier isTerminal;

  GambrelCommand(Documents.Maker maker, BooleanSupplier isTerminal) {
    this.maker = maker;
    this.isTerminal = isTerminal;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to do: start, check, run, explain, cuts or send.");
  }

  /** The version in the jar's manifest. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Version.class.getPackage().getImplementationVersion();
      return new String[] {"gambrel " + (version == null ? "(not packaged)" : version)};
    }
  }
}
