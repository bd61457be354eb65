package gambrel.weighing;

import java.util.function.LongConsumer;

/** Is told how much a long work has to do before it begins, then of each part that is done. */
@FunctionalInterface
public interface Headway {
  /** Nobody waits. */
  Headway NONE = total -> part -> {};

  /**
   * A work begins.
   *
   * @param total how much there is to do
   * @return takes what is done as it is done, from several threads at once if it comes to that; all
   *     parts add up to the total
   */
  LongConsumer begin(long total);
}
