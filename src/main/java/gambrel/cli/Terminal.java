package gambrel.cli;

import java.util.OptionalInt;

/** The terminal of standard error. */
@FunctionalInterface
interface Terminal {
  /** No terminal. */
  Terminal NONE = OptionalInt::empty;

  /** Its width; empty if there is no terminal, or a line cannot be drawn over itself. */
  OptionalInt columns();
}
