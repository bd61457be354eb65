package gambrel.cli;

import gambrel.files.folder.NewShop;
import gambrel.trade.cuts.Region;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the folder of a new shop. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    versionProvider = GambrelCommand.Version.class,
    description = "Writes an empty shop folder with comments on what to fill in.")
final class StartCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "DIR", description = "the folder; it must be new or empty")
  private Path folder;

  @Option(
      names = "--region",
      paramLabel = "REGION",
      description =
          "au, uk or us: whose cuts and names of cuts; default by the machine's time zone")
  private Region region;

  @Override
  public Integer call() {
    var command = spec.commandLine();
    try {
      if (!NewShop.isFree(folder)) {
        command.getErr().println("gambrel: " + folder + " is there and is not an empty folder.");
        return 2;
      }
      var taken = NewShop.write(folder, ZoneId.systemDefault(), Optional.ofNullable(region));
      var out = command.getOut();
      out.println(
          "A new shop is in %s, with the cuts of region %s. What to do next:"
              .formatted(folder, taken.id()));
      NewShop.steps().lines().forEach(line -> out.println(line.replace("SHOP", folder.toString())));
      return 0;
    } catch (IOException e) {
      command.getErr().println("gambrel: " + folder + " cannot be written: " + e + ".");
      return 4;
    }
  }
}
