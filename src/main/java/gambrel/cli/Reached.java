package gambrel.cli;

import gambrel.run.Stage;
import java.time.Duration;

/**
 * How far a stage is.
 *
 * @param total 0 where it is not counted
 * @param lately so much was done in the latter half of its time
 * @param during how long that half was
 * @param quiet how long ago something was last done
 */
record Reached(Stage stage, long done, long total, long lately, Duration during, Duration quiet) {
  /** No rate can be judged from less. */
  private static final Duration LEAST_TIME = Duration.ofSeconds(3);

  private static final int LEAST_PARTS = 2;
  private static final int LEAST_PERCENT = 2;
  private static final int PERCENT = 100;

  /** How much of the stage is done, in per cent, rounded down. */
  long percent() {
    return total == 0 ? 0 : PERCENT * Math.min(done, total) / total;
  }

  /**
   * What is left of this stage at its rate, in seconds; 0 as long as there is none to go by, and
   * once it has taken longer than that.
   */
  long secondsLeft() {
    if (done >= total || !isSteady() || !isJudged()) {
      return 0;
    }
    double left = during.toMillis() * ((double) (total - done) / lately) - quiet.toMillis();
    return Math.max(0, (long) Math.ceil(left / Duration.ofSeconds(1).toMillis()));
  }

  private boolean isJudged() {
    return during.compareTo(LEAST_TIME) >= 0
        && lately >= LEAST_PARTS
        && percent() >= LEAST_PERCENT;
  }

  /** Whether parts are alike: a file of the output may hold a page or all rows. */
  private boolean isSteady() {
    return stage != Stage.TABLES && stage != Stage.PUBLISHING;
  }
}
