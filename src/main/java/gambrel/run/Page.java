package gambrel.run;

import gambrel.render.TemplateProblem;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A page as it was made.
 *
 * @param bytes the document; empty if a template was in its way
 * @param problem why there is none, in a sentence without its full stop; else empty
 */
record Page(Optional<byte[]> bytes, String problem) {
  /** Makes a page. */
  static Page of(Supplier<byte[]> maker) {
    try {
      return new Page(Optional.of(maker.get()), "");
    } catch (TemplateProblem problem) {
      return new Page(Optional.empty(), problem.getMessage());
    }
  }
}
