package gambrel.insight.month.figures;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.temporal.ChronoField;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The bodies of a month, or of some months in a row; each list is in order of kill. For losses on
 * the rail a body belongs to the month of its kill, for cutting to the month of its last cut.
 *
 * @param night the night's figures
 * @param first the first month
 * @param month the last month, or the only one
 * @param all the bodies from which the lists select
 */
public record MonthBodies(Night night, YearMonth first, YearMonth month, List<MonthBody> all) {

  /** The bodies of some months, out of {@code all} bodies. */
  static MonthBodies of(Night night, List<MonthBody> all, YearMonth first, YearMonth last) {
    var months = new MonthBodies(night, first, last, all);
    var some = months.which(b -> months.isKilled(b) || months.isEnded(b) || months.isOnBlock(b));
    return new MonthBodies(night, first, last, some);
  }

  /** The bodies of some of these months. */
  public MonthBodies between(YearMonth from, YearMonth to) {
    return new MonthBodies(night, from, to, all);
  }

  /** Each month by itself, oldest first. */
  public List<MonthBodies> months() {
    return Stream.iterate(first, m -> !m.isAfter(month), m -> m.plusMonths(1))
        .map(m -> of(night, all, m, m))
        .toList();
  }

  private List<MonthBody> which(Predicate<MonthBody> which) {
    return all.stream().filter(which).toList();
  }

  private boolean includes(LocalDate day) {
    long its = day.getLong(ChronoField.PROLEPTIC_MONTH);
    return its >= first.getLong(ChronoField.PROLEPTIC_MONTH)
        && its <= month.getLong(ChronoField.PROLEPTIC_MONTH);
  }

  /** Whether a body was killed in the months, up to the night's day. */
  public boolean isKilled(MonthBody body) {
    var today = night.asOf().toLocalDate();
    return body.body().killed().filter(day -> includes(day) && !day.isAfter(today)).isPresent();
  }

  private boolean isEnded(MonthBody body) {
    return body.lastDay().filter(this::includes).isPresent();
  }

  private boolean isCutting(MonthBody body) {
    boolean ended = body.body().isCut() && isEnded(body);
    return ended && body.balance().lastCut().isPresent();
  }

  private boolean isCut(MonthBody body) {
    return isCutting(body) && isDone(body);
  }

  private boolean isWhole(MonthBody body) {
    return body.body().outcome() == Outcome.WHOLE && isEnded(body) && isDone(body);
  }

  private static boolean isDone(MonthBody body) {
    return body.state() != State.OPEN && body.balance().outputs().isPresent();
  }

  private boolean isOnBlock(MonthBody body) {
    for (var block : body.balance().topmostBlocks()) {
      if (includes(block.date())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a body's take-home counts for the months: the body is cut, or left whole. */
  public boolean isTakenHome(MonthBody body) {
    return isCut(body) || isWhole(body);
  }

  /** The bodies killed in the months, or cut last in them. */
  public List<MonthBody> bodies() {
    return which(body -> isKilled(body) || isCutting(body));
  }

  /** The bodies killed in the months. */
  public List<MonthBody> killed() {
    return which(this::isKilled);
  }

  /** The bodies cut last in the months, held ones too; open bodies, whose cutting goes on, not. */
  public List<MonthBody> cut() {
    return which(this::isCut);
  }

  /** The cut bodies that count: all weights are there and none is in doubt. */
  public List<MonthBody> settled() {
    return which(body -> isCut(body) && body.isCounted());
  }

  /** The bodies of the months that no figure counts, see {@link MonthBody#isCounted}. */
  public List<MonthBody> leftOut() {
    return which(body -> (isKilled(body) || isEnded(body)) && !body.isCounted());
  }

  /** The bodies that left the shop whole, as they hung. */
  public List<MonthBody> whole() {
    return which(this::isWhole);
  }

  /** The bodies whose take-home counts for the months. */
  public List<MonthBody> takenHome() {
    return which(this::isTakenHome);
  }

  /** The bodies of which a piece was weighed on the block in the months. */
  public List<MonthBody> onBlock() {
    return which(this::isOnBlock);
  }

  /** The time of the last weighing of the bodies; empty if there is none. */
  public Optional<OffsetDateTime> lastWeighing() {
    return bodies().stream()
        .flatMap(body -> body.balance().weighings().all().stream())
        .map(Weighing::time)
        .max(OffsetDateTime.timeLineOrder());
  }

  /** The batches whose last weighing was in the months, ordered by its time. */
  public List<BatchBalance> batches() {
    return night.batches().values().stream()
        .filter(batch -> includes(last(batch).toLocalDate()))
        .sorted(
            Comparator.comparing(MonthBodies::last, OffsetDateTime.timeLineOrder())
                .thenComparing(b -> b.batch().id()))
        .toList();
  }

  private static OffsetDateTime last(BatchBalance batch) {
    return batch.weighings().get(batch.weighings().size() - 1).time();
  }
}
