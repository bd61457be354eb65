package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.weighing.Weighing;
import java.math.BigInteger;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds two weighings that are equal, seconds apart, with consecutive tickets. */
final class DoublePress extends Finder {
  private static final int MOST_SECONDS = 15;
  private static final long PENALTY = 50;

  DoublePress(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return suspect.weighings().stream()
        .filter(rows::isUncorrected)
        .flatMap(weighing -> second(weighing).stream());
  }

  /** The removal of a weighing that repeats the one before it. */
  private Optional<Candidate> second(Weighing weighing) {
    var day = rows.day(weighing);
    int at = day.indexOf(weighing);
    if (at <= 0 || !isTwice(day.get(at - 1), weighing)) {
      return Optional.empty();
    }
    var first = day.get(at - 1);
    return Optional.of(
        Candidate.of(Cause.DOUBLE_PRESS, RowChange.remove(weighing), PENALTY)
            .with(
                Map.of(
                    "witness",
                    EvidenceText.ticket(first, "MIDDLE"),
                    "seconds",
                    new Value.Count(seconds(first, weighing)))));
  }

  private static boolean isTwice(Weighing one, Weighing next) {
    return one.body().equals(next.body())
        && one.batch().equals(next.batch())
        && one.code().equals(next.code())
        && one.net().equals(next.net())
        && one.pieces().equals(next.pieces())
        && one.customer().equals(next.customer())
        && seconds(one, next) <= MOST_SECONDS
        && isNext(one.ticket(), next.ticket());
  }

  private static long seconds(Weighing one, Weighing next) {
    return Duration.between(one.time(), next.time()).toSeconds();
  }

  private static boolean isNext(String ticket, String next) {
    boolean numbers = ticket.matches("\\d+") && next.matches("\\d+");
    return numbers
        ? new BigInteger(ticket).add(BigInteger.ONE).equals(new BigInteger(next))
        : ticket.isEmpty() && next.isEmpty();
  }
}
