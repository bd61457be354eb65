package gambrel.cli;

import gambrel.run.AsOf;
import gambrel.run.Inputs;
import gambrel.run.Progress;
import gambrel.run.RefusedException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command takes. */
final class ShopArguments {
  @Parameters(index = "0", paramLabel = "SHOP", description = "the shop folder")
  private Path shop;

  @Option(
      names = "--as-of",
      paramLabel = "DATETIME",
      description =
          "the moment at which things stand, like 2026-07-31T02:00; the shop's zone unless it"
              + " carries an offset; default now")
  private String asOf;

  @Option(names = "--quiet", description = "no progress and no closing lines")
  private boolean quiet;

  Path shop() {
    return shop;
  }

  boolean isQuiet() {
    return quiet;
  }

  Inputs read(Progress progress) throws RefusedException {
    return Inputs.read(shop, progress);
  }

  OffsetDateTime asOf(Inputs inputs) throws RefusedException {
    var zone = inputs.shop().settings().zone();
    return asOf == null ? AsOf.machine(zone) : AsOf.read(asOf, zone);
  }
}
