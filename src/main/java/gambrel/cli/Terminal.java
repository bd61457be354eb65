package gambrel.cli;

import java.util.OptionalInt;

/** What standard error leads to. */
@FunctionalInterface
interface Terminal {
  /** No terminal. */
  Terminal NONE = OptionalInt::empty;

  /** How wide it is; empty where there is none, or none on which a line can be drawn anew. */
  OptionalInt columns();
}
