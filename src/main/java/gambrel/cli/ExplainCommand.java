package gambrel.cli;

import gambrel.cause.LikelyCauses;
import gambrel.explain.Explanation;
import gambrel.reckoning.Reckoner;
import gambrel.run.Outcome;
import gambrel.run.Progress;
import gambrel.run.RefusedException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells where each figure of a body comes from. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Traces every figure of a body to file, line and ticket.")
final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopArguments arguments;

  @Parameters(index = "1", paramLabel = "BODY", description = "the body's id")
  private String body;

  @Override
  public Integer call() {
    var console = new Console(spec);
    try {
      var inputs = arguments.read(Progress.NONE);
      var night = new Reckoner(inputs.shop(), inputs.exports()).at(arguments.asOf(inputs));
      var causes = LikelyCauses.of(night, inputs.exports());
      var explanation = Explanation.of(night, causes, body);
      if (explanation.isEmpty()) {
        throw new RefusedException("bodies.csv has no body " + body);
      }
      explanation.get().forEach(console.out()::println);
      return ExitCode.DONE;
    } catch (RefusedException e) {
      return console.finish(new Outcome.Refused(e.getMessage()));
    }
  }
}
