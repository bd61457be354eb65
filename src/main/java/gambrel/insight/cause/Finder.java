package gambrel.insight.cause;

import java.util.List;

/** Finds changes of one kind that there is evidence for. */
interface Finder {
  /** Changes that might make {@code suspect} balance. */
  List<Candidate> candidates(BodyFacts suspect);
}
