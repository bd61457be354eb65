package gambrel.insight.month.bodies;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The bodies of a month, each list in order of kill. A body belongs to the month in which it was
 * killed for hanging and chilling, to the month of its last cut for cutting. Cancelled bodies
 * belong to none.
 *
 * @param night the night's figures
 * @param month the month
 * @param bodies every body that belongs to the month in one way or the other
 * @param killed the bodies killed in it
 * @param cut the bodies cut in it, if cutting is over: held ones are in, open ones are not
 * @param settled those cut whose weights hold and are all there
 * @param whole the bodies that left it whole, as they hung
 * @param onBlock the bodies of which a topmost piece was weighed on the block in it
 */
public record MonthBodies(
    Night night,
    YearMonth month,
    List<MonthBody> bodies,
    List<MonthBody> killed,
    List<MonthBody> cut,
    List<MonthBody> settled,
    List<MonthBody> whole,
    List<MonthBody> onBlock) {

  /** The bodies of {@code month} as {@code night} knows them. */
  public static MonthBodies of(Night night, YearMonth month) {
    return new BodyCalendar(night).of(month);
  }

  /** Whether a body was killed in the month. */
  public boolean isKilled(MonthBody body) {
    return killed.stream().anyMatch(b -> b == body);
  }

  /** Whether a body's take-home is of the month: cut in it and done with, or left whole. */
  public boolean isTakenHome(MonthBody body) {
    return cut.stream().anyMatch(b -> b == body) || whole.stream().anyMatch(b -> b == body);
  }

  /** When the last weighing of its bodies was made: nothing later is known of them. */
  public Optional<OffsetDateTime> lastWeighing() {
    return bodies.stream()
        .flatMap(body -> body.balance().weighings().all().stream())
        .map(Weighing::time)
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
