package gambrel.month;

import gambrel.balance.BatchBalance;
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
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The bodies of a month, in order of kill. A body belongs to the month in which it was killed for
 * hanging and chilling, to the month of its last cut for cutting. Cancelled bodies belong to none.
 */
public final class MonthBodies {
  private static final Comparator<BodyAccount> ORDER_OF_KILL =
      Comparator.comparing((BodyAccount a) -> a.body().killed().orElse(LocalDate.MAX))
          .thenComparing(a -> a.body().id());

  private final Night night;
  private final YearMonth month;
  private final Set<BodyAccount> killed = new TreeSet<>(ORDER_OF_KILL);
  private final Set<BodyAccount> cut = new TreeSet<>(ORDER_OF_KILL);
  private final Set<BodyAccount> whole = new TreeSet<>(ORDER_OF_KILL);
  private final Set<BodyAccount> onBlock = new TreeSet<>(ORDER_OF_KILL);
  private final Set<BodyAccount> all = new TreeSet<>(ORDER_OF_KILL);

  MonthBodies(Night night, YearMonth month) {
    this.night = night;
    this.month = month;
  }

  /** The bodies of {@code month} as {@code night} knows them. */
  public static MonthBodies of(Night night, YearMonth month) {
    return new BodyCalendar(night).of(month);
  }

  /** Takes in what a body has to do with the month. */
  void place(BodyAccount account) {
    if (wasKilledIn(account)) {
      killed.add(account);
      all.add(account);
    }
    if (onBlock(account).anyMatch(month::equals)) {
      onBlock.add(account);
    }
    boolean isOf = of(account).filter(month::equals).isPresent();
    if (isOf && account.body().outcome() == Outcome.WHOLE && isDone(account)) {
      whole.add(account);
    }
    if (isOf && account.body().outcome() == Outcome.CUT && lastCut(account).isPresent()) {
      all.add(account);
      if (isDone(account)) {
        cut.add(account);
      }
    }
  }

  private boolean wasKilledIn(BodyAccount account) {
    return account
        .body()
        .killed()
        .filter(day -> !day.isAfter(night.asOf().toLocalDate()))
        .filter(day -> YearMonth.from(day).equals(month))
        .isPresent();
  }

  private static boolean isDone(BodyAccount account) {
    return account.decision().state() != State.OPEN && account.balance().outputs().isPresent();
  }

  /** The months in which a topmost piece of a body was weighed on the block. */
  static Stream<YearMonth> onBlock(BodyAccount account) {
    return account.balance().topmostBlocks().stream().map(w -> YearMonth.from(w.date()));
  }

  private static Optional<YearMonth> lastCut(BodyAccount account) {
    return account.balance().lastCut().map(time -> YearMonth.from(time));
  }

  /** The month whose statements a body's statement is among: of its last cut, else of its kill. */
  public static Optional<YearMonth> of(BodyAccount account) {
    return lastCut(account).or(() -> account.body().killed().map(YearMonth::from));
  }

  /** The night's figures. */
  public Night night() {
    return night;
  }

  /** The month. */
  public YearMonth month() {
    return month;
  }

  /** Every body that belongs to the month in one way or the other. */
  public List<BodyAccount> bodies() {
    return List.copyOf(all);
  }

  /** The bodies killed in it. */
  public List<BodyAccount> killed() {
    return List.copyOf(killed);
  }

  /** The bodies cut in it, so far as cutting is over: open ones are left out, held ones are in. */
  public List<BodyAccount> cut() {
    return List.copyOf(cut);
  }

  /** The bodies that left it whole, as they hung. */
  public List<BodyAccount> whole() {
    return List.copyOf(whole);
  }

  /** The bodies of which a topmost piece was weighed on the block in it. */
  public List<BodyAccount> onBlock() {
    return List.copyOf(onBlock);
  }

  /** Whether a body was killed in the month. */
  public boolean isKilled(BodyAccount account) {
    return killed.contains(account);
  }

  /** Whether a body's take-home is of the month: cut in it and done with, or left whole. */
  public boolean isTakenHome(BodyAccount account) {
    return cut.contains(account) || whole.contains(account);
  }

  /** When the last weighing of its bodies was made: nothing later is known of them. */
  public Optional<OffsetDateTime> lastWeighing() {
    return all.stream()
        .flatMap(account -> account.balance().weighings().all().stream())
        .map(weighing -> weighing.time())
        .max(Comparator.comparing(OffsetDateTime::toInstant));
  }

  /** The batches whose last row is of the month, by that row's time. */
  public List<BatchBalance> batches() {
    return night.batches().values().stream()
        .filter(batch -> YearMonth.from(last(batch)).equals(month))
        .sorted(
            Comparator.comparing((BatchBalance b) -> last(b).toInstant())
                .thenComparing(b -> b.batch().id()))
        .toList();
  }

  private static OffsetDateTime last(BatchBalance batch) {
    return batch.weighings().get(batch.weighings().size() - 1).time();
  }
}
