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
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The bodies of every month. Each body is read once and put into its months in one pass. Cancelled
 * bodies belong to none. Immutable.
 */
public final class BodyCalendar {
  private static final Comparator<MonthBody> ORDER_OF_KILL =
      Comparator.comparing((MonthBody b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(MonthBody::id);

  private final Night night;
  private final Map<YearMonth, MonthBodies> months = new HashMap<>();

  /** The calendar of all bodies that {@code night} knows. */
  public BodyCalendar(Night night) {
    this.night = night;
    var bodies =
        night.bodies().values().parallelStream()
            .filter(account -> account.body().outcome() != Outcome.CANCELLED)
            .map(MonthBody::of)
            .sorted(ORDER_OF_KILL)
            .toList();
    var killed = byMonth(bodies, body -> killed(body).stream());
    var done = byMonth(bodies, body -> of(body.account()).stream());
    var onBlock = byMonth(bodies, BodyCalendar::onBlock);
    Stream.of(killed, done, onBlock)
        .flatMap(map -> map.keySet().stream())
        .distinct()
        .forEach(
            month ->
                months.put(
                    month, bodies(month, of(killed, month), of(done, month), of(onBlock, month))));
  }

  private static Map<YearMonth, List<MonthBody>> byMonth(
      List<MonthBody> bodies, Function<MonthBody, Stream<YearMonth>> months) {
    var byMonth = new HashMap<YearMonth, List<MonthBody>>();
    for (var body : bodies) {
      months
          .apply(body)
          .distinct()
          .forEach(month -> byMonth.computeIfAbsent(month, m -> new ArrayList<>()).add(body));
    }
    return byMonth;
  }

  private static List<MonthBody> of(Map<YearMonth, List<MonthBody>> byMonth, YearMonth month) {
    return byMonth.getOrDefault(month, List.of());
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

  private MonthBodies bodies(
      YearMonth month, List<MonthBody> killed, List<MonthBody> ended, List<MonthBody> onBlock) {
    var cut =
        ended.stream()
            .filter(b -> b.body().outcome() == Outcome.CUT && b.balance().lastCut().isPresent())
            .toList();
    var all = new ArrayList<>(killed);
    cut.stream().filter(b -> killed(b).filter(month::equals).isEmpty()).forEach(all::add);
    all.sort(ORDER_OF_KILL);
    var done = cut.stream().filter(BodyCalendar::isDone).toList();
    return new MonthBodies(
        night,
        month,
        List.copyOf(all),
        List.copyOf(killed),
        done,
        MonthBody.settled(done),
        ended.stream().filter(b -> b.body().outcome() == Outcome.WHOLE && isDone(b)).toList(),
        List.copyOf(onBlock));
  }

  private static boolean isDone(MonthBody body) {
    return body.state() != State.OPEN && body.balance().outputs().isPresent();
  }

  /** The month whose statements a body's statement is among: of its last cut, else of its kill. */
  public static Optional<YearMonth> of(BodyAccount account) {
    return account
        .balance()
        .lastCut()
        .map(YearMonth::from)
        .or(() -> account.body().killed().map(YearMonth::from));
  }

  /** The bodies of a month; none if it has none. */
  public MonthBodies of(YearMonth month) {
    var known = months.get(month);
    return known == null ? bodies(month, List.of(), List.of(), List.of()) : known;
  }

  /** The bodies of the twelve months before a month, oldest month first. */
  List<MonthBodies> before(YearMonth month) {
    var before = new ArrayList<MonthBodies>();
    for (int i = Baseline.MONTHS; i > 0; i--) {
      before.add(of(month.minusMonths(i)));
    }
    return before;
  }
}
