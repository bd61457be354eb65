package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
import java.math.BigInteger;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds two weighings that are equal, seconds apart, with consecutive tickets. */
record DoublePress(RowIndex rows, BodyFacts suspect) {
  private static final int MOST_SECONDS = 15;
  private static final long PRIOR = 200;

  Stream<Candidate> candidates() {
    return suspect.weighings().stream()
        .filter(rows::isUncorrected)
        .flatMap(weighing -> second(weighing).stream());
  }

  /** The removal of a weighing that repeats the one before it. */
  private Optional<Candidate> second(Weighing weighing) {
    var day = rows.day(weighing);
    int at = day.indexOf(weighing);
    return Optional.of(at - 1)
        .filter(before -> before >= 0)
        .map(day::get)
        .filter(first -> isTwice(first, weighing))
        .map(
            first ->
                Candidate.of(Cause.DOUBLE_PRESS, RowChange.remove(weighing), PRIOR)
                    .with("witness", EvidenceText.ticket(first, "MIDDLE"))
                    .with("seconds", seconds(first, weighing)));
  }

  private static boolean isTwice(Weighing one, Weighing next) {
    return one.body().equals(next.body())
        && one.batch().equals(next.batch())
        && one.code().equals(next.code())
        && one.net().equals(next.net())
        && one.pieces().equals(next.pieces())
        && one.customer().equals(next.customer())
        && seconds(one, next) <= MOST_SECONDS
        && isNext(one, next);
  }

  private static long seconds(Weighing one, Weighing next) {
    return Duration.between(one.time(), next.time()).toSeconds();
  }

  /** Whether the tickets are consecutive, or the scale prints none. */
  private static boolean isNext(Weighing one, Weighing next) {
    return one.ticket().isEmpty()
        ? next.ticket().isEmpty()
        : RowIndex.number(one)
            .map(BigInteger.ONE::add)
            .filter(number -> RowIndex.number(next).equals(Optional.of(number)))
            .isPresent();
  }
}
