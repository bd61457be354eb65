package gambrel.cli;

import gambrel.run.Documents;
import gambrel.run.Inputs;
import gambrel.run.Outcome;
import gambrel.run.Progress;
import gambrel.run.RefusedException;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that reads a shop folder and reckons it as a night does. */
abstract class ShopCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopArguments arguments;

  private final DocumentMaker maker;
  private final Terminal terminal;

  /**
   * A command.
   *
   * @param terminal what standard error is
   */
  ShopCommand(DocumentMaker maker, Terminal terminal) {
    this.maker = maker;
    this.terminal = terminal;
  }

  /**
   * A shop folder as it was read.
   *
   * @param asOf the moment at which things stand
   * @param documents makes its pages
   */
  record Reading(Inputs inputs, OffsetDateTime asOf, Documents documents) {}

  @Override
  public final Integer call() {
    var console = new Console(spec);
    try {
      return call(console);
    } catch (RefusedException e) {
      return console.finish(new Outcome.Refused(e.getMessage()));
    }
  }

  /** Does it; returns the exit code. */
  abstract int call(Console console) throws RefusedException;

  /** What was asked for. */
  final ShopArguments arguments() {
    return arguments;
  }

  /** Shows how far the work is until it is closed, which has to be before anything is printed. */
  final ProgressLine progress(Console console) {
    return ProgressLine.begin(console.err(), arguments.isQuiet() ? Terminal.NONE : terminal);
  }

  /** Reads the shop folder. */
  final Reading read(Progress progress) throws RefusedException {
    var inputs = arguments.read(progress);
    var asOf = arguments.asOf(inputs);
    return new Reading(inputs, asOf, maker.of(arguments.shop(), inputs.shop().settings()));
  }
}
