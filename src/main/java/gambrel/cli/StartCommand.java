package gambrel.cli;

import gambrel.files.folder.NewShop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
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

  @Override
  public Integer call() {
    var command = spec.commandLine();
    try {
      if (!NewShop.isFree(folder)) {
        command.getErr().println("gambrel: " + folder + " is there and is not an empty folder.");
        return 2;
      }
      NewShop.write(folder, ZoneId.systemDefault());
    } catch (IOException e) {
      command.getErr().println("gambrel: " + folder + " cannot be written: " + e + ".");
      return 4;
    }
    var out = command.getOut();
    out.println("A new shop is in " + folder + ". What to do next:");
    out.println("  1. shop.properties: the shop's name, and where it is");
    out.println("  2. scales.csv: each scale; then put its exports into exports/ID-OF-THE-SCALE/");
    out.println("  3. bodies.csv: each animal");
    out.println(
        "  4. gambrel check " + folder + ": says how it reads the exports, and what it lacks");
    out.println(
        "  5. codes.csv: what the scale's codes mean; gambrel cuts " + folder + " lists cuts");
    out.println("  6. gambrel run " + folder);
    return 0;
  }
}
