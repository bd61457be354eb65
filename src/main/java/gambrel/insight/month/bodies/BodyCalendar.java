package gambrel.insight.month.bodies;

import gambrel.trade.decision.State;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Outcome;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The bodies of every month, each read once. Cancelled bodies belong to no month. Immutable. */
public final class BodyCalendar {
  private static final int MONTHS_BEFORE = 12;

  private static final Comparator<MonthBody> ORDER_OF_KILL =
      Comparator.comparing((MonthBody b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(MonthBody::id);

  private final Night night;
  private final Map<YearMonth, MonthBodies> months = new HashMap<>();

  /** The calendar of all bodies of {@code night}. */
  public BodyCalendar(Night night) {
    this.night = night;
    var bodies =
        night.bodies().values().parallelStream()
            .filter(account -> account.body().outcome() != Outcome.CANCELLED)
            .map(MonthBody::of)
            .sorted(ORDER_OF_KILL)
            .toList();
    var byMonth = new HashMap<YearMonth, List<MonthBody>>();
    for (var body : bodies) {
      Stream.of(killed(body).stream(), of(body.account()).stream(), onBlock(body))
          .flatMap(of -> of)
          .distinct()
          .forEach(month -> byMonth.computeIfAbsent(month, m -> new ArrayList<>()).add(body));
    }
    byMonth.forEach((month, own) -> months.put(month, bodies(month, own)));
  }

  private Optional<YearMonth> killed(MonthBody body) {
    return body.body()
        .killed()
        .filter(day -> !day.isAfter(night.asOf().toLocalDate()))
        .map(YearMonth::from);
  }

  private static Stream<YearMonth> onBlock(MonthBody body) {
    return body.balance().topmostBlocks().stream().map(weighing -> YearMonth.from(weighing.date()));
  }

  private MonthBodies bodies(YearMonth month, List<MonthBody> own) {
    Predicate<MonthBody> killed = b -> killed(b).filter(month::equals).isPresent();
    Predicate<MonthBody> ended = b -> of(b.account()).filter(month::equals).isPresent();
    Predicate<MonthBody> cut =
        ended.and(b -> b.body().outcome() == Outcome.CUT && b.balance().lastCut().isPresent());
    Predicate<MonthBody> done = cut.and(BodyCalendar::isDone);
    return new MonthBodies(
        night,
        month,
        own.stream().filter(killed.or(cut)).toList(),
        own.stream().filter(killed).toList(),
        own.stream().filter(done).toList(),
        own.stream().filter(done.and(b -> b.account().isSettled())).toList(),
        own.stream()
            .filter(ended.and(b -> b.body().outcome() == Outcome.WHOLE && isDone(b)))
            .toList(),
        own.stream().filter(b -> onBlock(b).anyMatch(month::equals)).toList());
  }

  private static boolean isDone(MonthBody body) {
    return body.state() != State.OPEN && body.balance().outputs().isPresent();
  }

  /**
   * The month that a body's statement belongs to: of its last cut, else of its kill; empty if it
   * has neither.
   */
  public static Optional<YearMonth> of(BodyAccount account) {
    return account
        .balance()
        .lastCut()
        .map(YearMonth::from)
        .or(() -> account.body().killed().map(YearMonth::from));
  }

  /** The bodies of a month; empty lists if it has none. */
  public MonthBodies of(YearMonth month) {
    var known = months.get(month);
    return known == null ? bodies(month, List.of()) : known;
  }

  /** The bodies of the twelve months before a month. */
  Baseline before(YearMonth month) {
    return new Baseline(
        month,
        IntStream.rangeClosed(1, MONTHS_BEFORE)
            .mapToObj(i -> of(month.minusMonths(1L + MONTHS_BEFORE - i)))
            .toList());
  }
}
