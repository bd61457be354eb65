package gambrel.pages.statement;

import gambrel.trade.measure.Exact;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Outcome;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The take-home percentages of earlier bodies of the same species and class at this shop.
 *
 * @param count the number of bodies
 * @param least the smallest take-home of cold weight, in per cent
 * @param most the largest take-home of cold weight, in per cent
 */
record OwnBodies(int count, BigFraction least, BigFraction most) {
  /** With fewer bodies, a range would disclose the figures of single customers. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  /**
   * The last 20 bodies cut before the subject's body, so that a later body changes no page; empty
   * if there are fewer than five.
   */
  static Optional<OwnBodies> of(StatementContext subject) {
    var cut = subject.balance().lastCut();
    if (cut.isEmpty() || subject.body().category().isEmpty()) {
      return Optional.empty();
    }
    var percents =
        subject.night().bodies().values().stream()
            .filter(account -> isOfKind(account, subject.body()) && isDone(account))
            .filter(account -> lastCut(account).isBefore(cut.get().toInstant()))
            .sorted(Comparator.comparing(OwnBodies::lastCut).reversed())
            .limit(MOST)
            .map(account -> account.balance().shares().takeHomeOfCold().orElseThrow().percent())
            .sorted()
            .toList();
    return percents.size() < FEWEST
        ? Optional.empty()
        : Optional.of(
            new OwnBodies(percents.size(), percents.get(0), percents.get(percents.size() - 1)));
  }

  /** Whether a percentage, as printed, is below (−1), within (0) or above (1) the range. */
  int compare(BigFraction percent) {
    var printed = Exact.round(percent, 1);
    if (printed.compareTo(Exact.round(least, 1)) < 0) {
      return -1;
    }
    return printed.compareTo(Exact.round(most, 1)) > 0 ? 1 : 0;
  }

  private static boolean isOfKind(BodyAccount account, Body body) {
    return account.body().species() == body.species()
        && account.body().category().equals(body.category());
  }

  private static boolean isDone(BodyAccount account) {
    return account.isSettled()
        && account.body().outcome() == Outcome.CUT
        && account.balance().shares().takeHomeOfCold().isPresent()
        && account.balance().lastCut().isPresent();
  }

  private static Instant lastCut(BodyAccount account) {
    return account.balance().lastCut().orElseThrow().toInstant();
  }
}
