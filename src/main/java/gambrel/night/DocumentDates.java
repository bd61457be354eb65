package gambrel.night;

import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * Dates of documents that are made anew every night: by what they are about, so that a document of
 * which nothing has changed keeps its bytes.
 */
final class DocumentDates {
  private DocumentDates() {}

  /** When a body was weighed last. */
  static Optional<Instant> of(BodyAccount account) {
    return account.balance().weighings().all().stream()
        .map(weighing -> weighing.time().toInstant())
        .max(Comparator.naturalOrder());
  }

  /** When the last of a month's bodies was weighed last; else the month's beginning. */
  static Instant of(Night night, YearMonth month) {
    var bodies =
        night.bodies().values().stream()
            .filter(body -> Months.of(body).anyMatch(month::equals))
            .toList();
    return latest(bodies)
        .orElseGet(() -> month.atDay(1).atStartOfDay(night.shop().settings().zone()).toInstant());
  }

  private static Optional<Instant> latest(Collection<BodyAccount> bodies) {
    return bodies.stream().flatMap(account -> of(account).stream()).max(Comparator.naturalOrder());
  }
}
