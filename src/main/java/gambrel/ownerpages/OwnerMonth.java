package gambrel.ownerpages;

import gambrel.decision.State;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Outcome;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The bodies of a month. A body belongs to the month in which it was killed for hanging and chilling,
 * to the month of its last cut for cutting. Cancelled bodies belong to none.
 *
 * @param night the night's figures
 * @param month the month
 */
record OwnerMonth(Night night, YearMonth month) {
  private static final Comparator<BodyAccount> ORDER_OF_KILL =
      Comparator.comparing((BodyAccount a) -> a.body().killed().orElse(LocalDate.MAX))
          .thenComparing(a -> a.body().id());

  /** Every body that belongs to the month in one way or the other, in order of kill. */
  List<BodyAccount> bodies() {
    return where(account -> isKilled(account) || isCut(account));
  }

  /** The bodies killed in it. */
  List<BodyAccount> killed() {
    return where(this::isKilled);
  }

  /** The bodies cut in it, so far as cutting is over: open ones are left out, held ones are in. */
  List<BodyAccount> cut() {
    return where(this::isCutAndDone);
  }

  /** The bodies that left it whole, as they hung. */
  List<BodyAccount> whole() {
    return where(
        account -> account.body().outcome() == Outcome.WHOLE && isDone(account) && isOf(account));
  }

  /** Whether a body was killed in the month. */
  boolean isKilled(BodyAccount account) {
    return account
        .body()
        .killed()
        .filter(day -> !day.isAfter(night.asOf().toLocalDate()))
        .filter(day -> YearMonth.from(day).equals(month))
        .isPresent();
  }

  /** Whether a body was cut last in the month, and nothing more is to come off it. */
  boolean isCutAndDone(BodyAccount account) {
    return isCut(account) && isDone(account);
  }

  /** When the last weighing of the month's bodies was made: later than this nothing is known of it. */
  Optional<OffsetDateTime> lastWeighing() {
    return bodies().stream()
        .flatMap(account -> account.balance().weighings().all().stream())
        .map(weighing -> weighing.time())
        .max(Comparator.comparing(OffsetDateTime::toInstant));
  }

  /** The month whose statements a body's statement is among: of its last cut, else of its kill. */
  static Optional<YearMonth> of(BodyAccount account) {
    return cutMonth(account).or(() -> account.body().killed().map(YearMonth::from));
  }

  private boolean isOf(BodyAccount account) {
    return of(account).filter(month::equals).isPresent();
  }

  private boolean isCut(BodyAccount account) {
    return account.body().outcome() == Outcome.CUT
        && cutMonth(account).filter(month::equals).isPresent();
  }

  private static boolean isDone(BodyAccount account) {
    return account.decision().state() != State.OPEN && account.balance().outputs().isPresent();
  }

  private static Optional<YearMonth> cutMonth(BodyAccount account) {
    return account.balance().lastCut().map(time -> YearMonth.from(time));
  }

  private List<BodyAccount> where(Predicate<BodyAccount> belongs) {
    return night.bodies().values().stream()
        .filter(account -> account.body().outcome() != Outcome.CANCELLED)
        .filter(belongs)
        .sorted(ORDER_OF_KILL)
        .toList();
  }
}
