package gambrel.month;

import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Outcome;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bodies of every month, put into their months in one pass. Cancelled bodies belong to none.
 * Safe for use by several threads.
 */
public final class BodyCalendar {
  private final Night night;
  private final Map<YearMonth, MonthBodies> months = new HashMap<>();

  /** The calendar of all bodies that {@code night} knows. */
  public BodyCalendar(Night night) {
    this.night = night;
    for (var account : night.bodies().values()) {
      if (account.body().outcome() != Outcome.CANCELLED) {
        months(account)
            .distinct()
            .forEach(month -> months.computeIfAbsent(month, this::none).place(account));
      }
    }
  }

  private static Stream<YearMonth> months(BodyAccount account) {
    var own = Stream.of(account.body().killed().map(YearMonth::from), MonthBodies.of(account));
    return Stream.concat(own.flatMap(Optional::stream), MonthBodies.onBlock(account));
  }

  /** The bodies of a month; none where it has none. */
  public MonthBodies of(YearMonth month) {
    var known = months.get(month);
    return known == null ? none(month) : known;
  }

  private MonthBodies none(YearMonth month) {
    return new MonthBodies(night, month);
  }
}
