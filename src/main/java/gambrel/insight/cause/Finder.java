package gambrel.insight.cause;

import java.util.stream.Stream;

/** Finds changes of one kind that might make a body balance. */
abstract class Finder {
  /** The rows of the night. */
  final RowIndex rows;

  /** The body that does not balance. */
  final BodyFacts suspect;

  Finder(RowIndex rows, BodyFacts suspect) {
    this.rows = rows;
    this.suspect = suspect;
  }

  /** The changes for which there is evidence. */
  abstract Stream<Candidate> candidates();

  /** What all finders find for a body. */
  static Stream<Candidate> all(RowIndex rows, BodyFacts suspect) {
    return Stream.of(
            new DoublePress(rows, suspect),
            new WrongBody(rows, suspect),
            new Changeover(rows, suspect),
            new StrayPart(rows, suspect),
            new TareLeftOn(rows, suspect),
            new Hook(rows, suspect),
            new DecimalSlip(rows, suspect),
            new WrongUnit(rows, suspect))
        .flatMap(Finder::candidates);
  }
}
