package gambrel.cli;

import gambrel.files.publish.Disk;
import gambrel.night.AsOf;
import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** A command that reads a shop folder and computes its figures as a night does. */
abstract class ShopCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @ParentCommand private GambrelCommand program;

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

  /**
   * A shop folder as it was read.
   *
   * @param asOf the moment of the run
   * @param documents makes its documents
   * @param run a run over it
   */
  record Reading(Inputs inputs, OffsetDateTime asOf, Documents documents, NightlyRun run) {}

  @Override
  public final Integer call() {
    try {
      return work();
    } catch (RefusedException e) {
      return finish(NightOutcome.Stopped.refused(e));
    }
  }

  /** Does the work of the command; returns the exit code. */
  abstract int work() throws RefusedException;

  final Path shop() {
    return shop;
  }

  /** The output folder whose register counts where none is given. */
  final Path reports() {
    return shop.resolve("reports");
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
    return ProgressLine.begin(err(), quiet ? () -> false : program.isTerminal);
  }

  /** Reads the shop folder. */
  final Reading read(Progress progress) throws RefusedException {
    var inputs = Inputs.read(shop, progress);
    var settings = inputs.shop().settings();
    var zone = settings.zone();
    var documents = program.maker.of(shop, settings);
    return new Reading(
        inputs,
        asOf == null ? AsOf.machine(zone) : AsOf.read(asOf, zone),
        documents,
        new NightlyRun(inputs, documents, Disk.SYSTEM, progress));
  }

  /** Refuses to write at or under the shop's exports, also by links and dots. */
  final void refuseExports(Path path) throws RefusedException {
    if (real(path.toAbsolutePath()).startsWith(real(shop.resolve("exports").toAbsolutePath()))) {
      throw new RefusedException(path + " lies in the shop's exports, which are never written to");
    }
  }

  /** An absolute path without links and dots, as far as it exists. */
  private static Path real(Path path) {
    if (path.getParent() == null) {
      return path;
    }
    var real = real(path.getParent()).resolve(path.getFileName()).normalize();
    try {
      return real.toRealPath();
    } catch (IOException e) {
      return real;
    }
  }

  /** Prints to standard error why a run was refused or failed; returns the exit code. */
  final int finish(NightOutcome outcome) {
    if (outcome instanceof NightOutcome.Stopped stopped) {
      err().println("gambrel: " + stopped.why());
    }
    return outcome.exitCode();
  }
}
