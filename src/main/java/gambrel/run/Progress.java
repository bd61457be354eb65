package gambrel.run;

import gambrel.weighing.Headway;
import java.util.function.LongConsumer;

/** Is told how far a night's work is. */
@FunctionalInterface
public interface Progress {
  /** Nobody waits. */
  Progress NONE = (stage, total) -> part -> {};

  /**
   * A stage begins, and the one before is over.
   *
   * @param total how much there is to do, in the unit of the stage; 0 where there is nothing or it
   *     is not counted
   * @return takes what is done as it is done, from several threads at once
   */
  LongConsumer begin(Stage stage, long total);

  /** The same for a work that knows nothing of stages. */
  default Headway of(Stage stage) {
    return total -> begin(stage, total);
  }
}
