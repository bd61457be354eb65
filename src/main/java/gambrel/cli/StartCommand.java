package gambrel.cli;

import gambrel.files.folder.NewShop;
import gambrel.trade.cuts.Region;
import gambrel.trade.measure.FileWord;
import java.io.IOException;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

/** Writes the folder of a new shop. */
final class StartCommand extends Command {
  private static final String REGION = "region";

  StartCommand() {
    super("start", "Writes an empty shop folder with comments on what to fill in.");
    takes("DIR", "the folder; it must be new or empty");
    option(
        REGION,
        "REGION",
        "au, uk or us: whose cuts and names of cuts; default by the machine's time zone");
  }

  @Override
  int work() {
    var folder = folder();
    var region = value(REGION).map(StartCommand::region);
    try {
      if (!NewShop.isFree(folder)) {
        err().println("gambrel: " + folder + " is there and is not an empty folder.");
        return 2;
      }
      var taken = NewShop.write(folder, ZoneId.systemDefault(), region);
      out()
          .println(
              "A new shop is in %s, with the cuts of region %s. What to do next:"
                  .formatted(folder, taken.id()));
      // The launcher says how it was called.
      String command = Optional.of("GAMBREL_COMMAND").map(System::getenv).orElse("gambrel");
      NewShop.steps()
          .replace("COMMAND", command)
          .replace("SHOP", folder.toString())
          .lines()
          .forEach(out()::println);
      return 0;
    } catch (IOException e) {
      err().println("gambrel: " + folder + " cannot be written: " + e + ".");
      return 4;
    }
  }

  private static Region region(String text) {
    return FileWord.find(Region.class, text.toLowerCase(Locale.ROOT))
        .orElseThrow(() -> new BadUsage('"' + text + "\" is no region: au, uk or us."));
  }
}
