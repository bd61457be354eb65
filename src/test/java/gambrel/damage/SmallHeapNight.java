package gambrel.damage;

import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.util.List;

/** One night in a process of its own, whose heap the test decides. */
public final class SmallHeapNight {
  private SmallHeapNight() {}

  /** Runs the night of {@code SHOP OUT AS-OF} and exits with its code. */
  public static void main(String[] args) throws RefusedException {
    var inputs = Inputs.read(Path.of(args[0]), Progress.NONE);
    var asOf = AsOf.read(args[2], inputs.shop().settings().zone());
    var outcome =
        new NightlyRun(inputs, new PlainDocuments()).run(Path.of(args[1]), asOf, List.of());
    System.exit(outcome.exitCode());
  }
}
