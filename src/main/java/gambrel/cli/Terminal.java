package gambrel.cli;

import java.util.OptionalInt;

/** Where a person may watch. */
interface Terminal {
  /** Nobody watches. */
  Terminal NONE =
      new Terminal() {
        @Override
        public OptionalInt columns() {
          return OptionalInt.empty();
        }

        @Override
        public long nanos() {
          return 0;
        }
      };

  /** How wide it is; empty where there is none, or none on which a line can be drawn anew. */
  OptionalInt columns();

  /** A clock that only tells how long something takes. */
  long nanos();
}
