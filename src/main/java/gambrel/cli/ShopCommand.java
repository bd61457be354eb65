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
import java.nio.file.Path;
import java.time.OffsetDateTime;

/** A command that reads a shop folder and computes its figures as a night does. */
abstract class ShopCommand extends Command {
  private static final String OUT = "out";
  private static final String AS_OF = "as-of";
  private static final String QUIET = "quiet";

  /** A command with a shop folder, a moment and {@code --quiet}. */
  ShopCommand(String name, String does) {
    super(name, does);
    takes("SHOP", "the shop folder");
    option(
        AS_OF,
        "DATETIME",
        "the moment at which things stand, like 2026-07-31T02:00; the shop's zone unless it"
            + " carries an offset; default now");
    option(QUIET, "", "no progress and no closing lines");
  }

  /** Adds the option of the output folder. */
  final void takesOut() {
    option(OUT, "DIR", "the output folder; default SHOP/reports");
  }

  /** The output folder that is asked for, else the usual one. */
  final Path root() {
    return pathOf(OUT).orElse(reports());
  }

  /**
   * A shop folder as it was read.
   *
   * @param asOf the moment of the run
   * @param documents makes its documents
   * @param run a run over it
   */
  record Reading(Inputs inputs, OffsetDateTime asOf, Documents documents, NightlyRun run) {}

  @Override
  final int work() {
    try {
      return workOnShop();
    } catch (RefusedException e) {
      return finish(NightOutcome.Stopped.refused(e));
    }
  }

  /** Does the work of the command; returns the exit code. */
  abstract int workOnShop() throws RefusedException;

  /** The output folder whose register counts where none is given. */
  final Path reports() {
    return folder().resolve("reports");
  }

  final boolean isQuiet() {
    return has(QUIET);
  }

  /** Begins a progress line; it has to be closed before anything is printed. */
  final ProgressLine progress() {
    return ProgressLine.begin(err(), isQuiet() ? () -> false : program().isTerminal());
  }

  /** Reads the shop folder. */
  final Reading read(Progress progress) throws RefusedException {
    var inputs = Inputs.read(folder(), progress);
    var settings = inputs.shop().settings();
    var zone = settings.zone();
    var documents = program().maker().of(folder(), settings);
    var asOf = value(AS_OF);
    return new Reading(
        inputs,
        asOf.isEmpty() ? AsOf.machine(zone) : AsOf.read(asOf.get(), zone),
        documents,
        new NightlyRun(inputs, documents, Disk.SYSTEM, progress));
  }

  /** Refuses to write at or under the shop's exports, also by links and dots. */
  final void refuseExports(Path path) throws RefusedException {
    if (real(path.toAbsolutePath())
        .startsWith(real(folder().resolve("exports").toAbsolutePath()))) {
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
