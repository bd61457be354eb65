package gambrel.cli;

import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that reads a shop folder and computes its figures as a night does. */
abstract class ShopCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

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

  private final DocumentMaker maker;
  private final Terminal terminal;

  /**
   * A command.
   *
   * @param maker makes the shop's documents
   * @param terminal the terminal of standard error
   */
  ShopCommand(DocumentMaker maker, Terminal terminal) {
    this.maker = maker;
    this.terminal = terminal;
  }

  /**
   * A shop folder as it was read.
   *
   * @param asOf the moment of the run
   * @param run a run over it
   */
  record Reading(Inputs inputs, OffsetDateTime asOf, NightlyRun run) {}

  @Override
  public final Integer call() {
    try {
      return work();
    } catch (RefusedException e) {
      return finish(new NightOutcome.Refused(e.getMessage()));
    }
  }

  /** Does the work of the command; returns the exit code. */
  abstract int work() throws RefusedException;

  final Path shop() {
    return shop;
  }

  final boolean isQuiet() {
    return quiet;
  }

  final PrintWriter out() {
    return spec.commandLine().getOut();
  }

  final PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Begins a progress line; it has to be closed before anything is printed. */
  final ProgressLine progress() {
    return ProgressLine.begin(err(), quiet ? Terminal.NONE : terminal);
  }

  /** Reads the shop folder. */
  final Reading read(Progress progress) throws RefusedException {
    var inputs = Inputs.read(shop, progress);
    var settings = inputs.shop().settings();
    var zone = settings.zone();
    return new Reading(
        inputs,
        asOf == null ? AsOf.machine(zone) : AsOf.read(asOf, zone),
        new NightlyRun(inputs, maker.of(shop, settings), progress));
  }

  /** Prints to standard error why a run was refused or failed; returns the exit code. */
  final int finish(NightOutcome outcome) {
    if (outcome instanceof NightOutcome.Refused refused) {
      err().println("gambrel: " + refused.why() + ".");
    } else if (outcome instanceof NightOutcome.Busy) {
      err().println("gambrel: another run holds this output folder.");
    } else if (outcome instanceof NightOutcome.Failed failed) {
      err()
          .printf(
              "gambrel: failed, and the last published state stands: %s. See that the disk has room"
                  + " and may be written to, then run again.%n",
              failed.why());
    }
    return outcome.exitCode();
  }
}
