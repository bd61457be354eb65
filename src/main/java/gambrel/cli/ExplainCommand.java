package gambrel.cli;

import gambrel.insight.cause.LikelyCauses;
import gambrel.night.NightOutcome;
import gambrel.night.RefusedException;
import gambrel.pages.explain.Explanation;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;

/** Prints how each figure of a body was computed, from which rows. */
final class ExplainCommand extends ShopCommand {
  ExplainCommand() {
    super("explain", "Traces every figure of a body to file, line and ticket.");
    takes("BODY", "the body's id");
  }

  @Override
  int workOnShop() throws RefusedException {
    var reading = read(Progress.NONE);
    Night night;
    try {
      night = reading.run().night(reports(), reading.asOf());
    } catch (IOException e) {
      return finish(NightOutcome.Stopped.failed(e, reports()));
    }
    var body = parameter(1).orElseThrow();
    var causes = LikelyCauses.of(night, reading.inputs().exports());
    var explanation = Explanation.of(night, causes, body);
    if (explanation.isEmpty()) {
      throw new RefusedException("bodies.csv has no body " + body);
    }
    explanation.get().forEach(out()::println);
    return 0;
  }
}
