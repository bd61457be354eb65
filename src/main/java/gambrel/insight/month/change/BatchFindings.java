package gambrel.insight.month.change;

import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.statistics.DayValues;
import gambrel.insight.statistics.DayValues.Effect;
import gambrel.insight.statistics.Moments;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Batches that are out of balance, and batches that lost more than those of the same products
 * before. All products together and each by itself are tried from every day of the month on, and
 * from the first day of the month before; the rate of false alarms is divided among them.
 *
 * @param records the records of the month
 * @param explained what changed losses: what a scale makes of a batch's loss is taken off
 * @param before the batches of the twelve months before
 * @param ofMonth the batches of the month
 */
record BatchFindings(
    MonthRecords records,
    List<ChangeExplanation> explained,
    List<BatchBalance> before,
    List<BatchBalance> ofMonth) {
  private static final int LEAST_BEFORE = 8;
  private static final int LEAST_DAYS = 3;
  private static final int LEAST = 3;

  /** Batches from a day on that lost more. */
  private record Rise(LocalDate since, List<BatchBalance> batches, Effect effect) {}

  private static List<BatchBalance> known(MonthBodies months) {
    return months.batches().stream().filter(batch -> batch.lossShare().isPresent()).toList();
  }

  static List<Finding> of(MonthRecords records, List<ChangeExplanation> explained) {
    var all =
        new BatchFindings(records, explained, known(records.baseline()), known(records.bodies()));
    var out = all.ofMonth.stream().filter(BatchBalance::isOut).map(all::outOfBalance);
    return Stream.concat(all.rise().stream(), out).toList();
  }

  private static LocalDate day(BatchBalance batch) {
    return Weighing.last(batch.weighings()).orElseThrow().date();
  }

  private static double percent(BatchBalance batch) {
    return batch.lossShare().orElseThrow().percent().doubleValue();
  }

  private double unknown(BatchBalance batch) {
    return percent(batch) - explained.stream().mapToDouble(one -> one.explains(batch)).sum();
  }

  private Optional<Finding> rise() {
    if (before.size() < LEAST_BEFORE
        || before.stream().map(BatchFindings::day).distinct().count() < LEAST_DAYS) {
      return Optional.empty();
    }
    var values =
        Groups.both(before, ofMonth).stream()
            .map(b -> new DayValues.Value(List.of(b.batch().product()), day(b), unknown(b), 0))
            .toList();
    var model = new DayValues(values, before.size());
    var products = ofMonth.stream().map(b -> b.batch().product()).sorted();
    var days = ofMonth.stream().map(BatchFindings::day);
    var first = Stream.of(records.month().atDay(1).minusMonths(1));
    var since = Stream.concat(first, days).distinct().toList();
    var rises =
        Stream.concat(Stream.of(""), products)
            .distinct()
            .flatMap(product -> since.stream().flatMap(day -> rise(model, product, day).stream()))
            .toList();
    return rises.stream()
        .filter(rise -> rise.effect().size() > 0 && rise.effect().strength() > limit(rise, rises))
        .max(Comparator.comparingDouble(rise -> rise.effect().strength()))
        .map(rise -> lostMore(rise, limit(rise, rises)));
  }

  private static double limit(Rise rise, List<Rise> rises) {
    return Moments.studentsAbove(rise.effect().degrees(), AlarmRates.CHANGE / rises.size());
  }

  /** The rise of one product, or of all if its name is empty; empty if too few are of the month. */
  private Optional<Rise> rise(DayValues model, String product, LocalDate since) {
    Predicate<BatchBalance> isExposed =
        b -> (product.isEmpty() || product.equals(b.batch().product())) && !day(b).isBefore(since);
    var all = Groups.both(before, ofMonth).stream();
    var exposed = ofMonth.stream().filter(isExposed).toList();
    return model
        .effect(all.mapToDouble(b -> isExposed.test(b) ? 1 : 0).toArray())
        .filter(effect -> exposed.size() >= LEAST)
        .map(effect -> new Rise(since, exposed, effect));
  }

  private Finding lostMore(Rise rise, double limit) {
    double more = rise.effect().mean();
    double mean = rise.batches().stream().mapToDouble(BatchFindings::percent).average().orElse(0);
    var ids = rise.batches().stream().map(batch -> batch.batch().id()).toList();
    var shares = rise.batches().stream().map(batch -> batch.lossShare().orElseThrow());
    var in = Weight.sum(shares.map(Share::whole).toList());
    var lost = in.fraction().multiply(Exact.ofStatistic(more)).divide(100);
    return Finding.likely(
        Finding.Kind.BATCH,
        "more",
        ids,
        Map.of(
            "since", new Evidence.Day(rise.since()),
            "batches", new Evidence.Count(ids.size()),
            "batches_before", new Evidence.Count(before.size()),
            "loss", Evidence.percent(Exact.ofStatistic(mean)),
            "usual", Evidence.percent(Exact.ofStatistic(mean - more)),
            "weight", new Evidence.Mass(Weight.of(lost)),
            "t", new Evidence.Number(Exact.ofStatistic(rise.effect().strength()), 2),
            "t_limit", new Evidence.Number(Exact.ofStatistic(limit), 2)),
        List.of());
  }

  private Finding outOfBalance(BatchBalance batch) {
    var loss = batch.loss().orElseThrow();
    var size = loss.isNegative() ? Weight.ZERO.minus(loss) : loss;
    var limit = Exact.fraction(records.settings().limits().batchLossPercent());
    return Finding.certain(
        Finding.Kind.BATCH,
        loss.isNegative() ? "gain" : "loss",
        List.of(batch.batch().id()),
        Map.of(
            "batch",
            new Evidence.Name(batch.batch().id()),
            "weight",
            new Evidence.Mass(size),
            "loss",
            Evidence.percent(batch.lossShare().orElseThrow().percent().abs()),
            "limit",
            Evidence.percent(limit)),
        List.of());
  }
}
