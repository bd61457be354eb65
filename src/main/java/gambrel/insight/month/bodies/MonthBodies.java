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
 * The bodies of a month, each list in order of kill. For losses on the rail a body belongs to the
 * month of its kill, for cutting to the month of its last cut. Cancelled bodies belong to none.
 *
 * @param night the night's figures
 * @param month the month
 * @param bodies the bodies killed in the month, or cut last in it
 * @param killed the bodies killed in it
 * @param cut the bodies cut last in it, held ones too; open bodies, whose cutting goes on, are not
 * @param settled the cut bodies that are settled: all weights are there and none is in doubt
 * @param whole the bodies that left the shop whole, as they hung
 * @param onBlock the bodies of which a piece was weighed on the block in it
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

  /** Whether a body was killed in the month. */
  public boolean isKilled(MonthBody body) {
    return killed.stream().anyMatch(b -> b == body);
  }

  /** Whether a body's take-home counts for the month: the body is cut, or left whole. */
  public boolean isTakenHome(MonthBody body) {
    return cut.stream().anyMatch(b -> b == body) || whole.stream().anyMatch(b -> b == body);
  }

  /** The time of the last weighing of its bodies; empty if there is none. */
  public Optional<OffsetDateTime> lastWeighing() {
    return bodies.stream()
        .flatMap(body -> body.balance().weighings().all().stream())
        .map(Weighing::time)
        .max(Comparator.comparing(OffsetDateTime::toInstant));
  }

  /** The batches whose last weighing was in the month, ordered by its time. */
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
