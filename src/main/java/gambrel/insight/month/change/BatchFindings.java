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
import gambrel.trade.measure.Weight;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Batches that are out of balance, and batches that lost more than those of the same products
 * before. All products together and each by itself are tried from every day of the month on, and
 * from the first day of the month before; the rate of false alarms is divided among them.
 */
final class BatchFindings {
  private static final int LEAST_BEFORE = 8;
  private static final int LEAST_DAYS = 3;
  private static final int LEAST = 3;

  private final MonthRecords records;
  private final List<BatchBalance> batches = new ArrayList<>();
  private final List<ChangeExplanation> explained;
  private final int baseline;

  /** Batches from a day on that lost more. */
  private record Rise(LocalDate since, List<BatchBalance> ofMonth, Effect effect) {}

  private BatchFindings(MonthRecords records, List<ChangeExplanation> explained) {
    this.records = records;
    this.explained = explained;
    batches.addAll(known(records.baseline()));
    baseline = batches.size();
    batches.addAll(known(records.bodies()));
  }

  private static List<BatchBalance> known(MonthBodies months) {
    return months.batches().stream().filter(batch -> batch.lossShare().isPresent()).toList();
  }

  /**
   * The findings of a month.
   *
   * @param explained what changed losses: what a scale makes of a batch's loss is taken off
   */
  static List<Finding> of(MonthRecords records, List<ChangeExplanation> explained) {
    var findings = new BatchFindings(records, explained);
    return Stream.concat(
            findings.rise().stream(),
            known(records.bodies()).stream()
                .filter(BatchBalance::isOut)
                .map(findings::outOfBalance))
        .toList();
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
    var before = batches.subList(0, baseline).stream().map(BatchFindings::day).distinct().count();
    if (baseline < LEAST_BEFORE || before < LEAST_DAYS) {
      return Optional.empty();
    }
    var values =
        batches.stream()
            .map(b -> new DayValues.Value(List.of(b.batch().product()), day(b), unknown(b), 0))
            .toList();
    var model = new DayValues(values, baseline);
    var ofMonth = batches.subList(baseline, batches.size());
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
    var exposure =
        batches.stream()
            .mapToDouble(b -> isOf(product, b) && !day(b).isBefore(since) ? 1 : 0)
            .toArray();
    var ofMonth =
        IntStream.range(baseline, batches.size())
            .filter(i -> exposure[i] > 0)
            .mapToObj(batches::get)
            .toList();
    return model
        .effect(exposure)
        .filter(effect -> ofMonth.size() >= LEAST)
        .map(effect -> new Rise(since, ofMonth, effect));
  }

  private static boolean isOf(String product, BatchBalance batch) {
    return product.isEmpty() || product.equals(batch.batch().product());
  }

  private Finding lostMore(Rise rise, double limit) {
    double more = rise.effect().mean();
    double mean = rise.ofMonth().stream().mapToDouble(BatchFindings::percent).average().orElse(0);
    var ids = rise.ofMonth().stream().map(batch -> batch.batch().id()).toList();
    var in =
        Weight.sum(
            rise.ofMonth().stream().map(batch -> batch.lossShare().orElseThrow().whole()).toList());
    var lost = in.fraction().multiply(Exact.ofStatistic(more)).divide(100);
    return Finding.likely(
        Finding.Kind.BATCH,
        "more",
        ids,
        Map.of(
            "since", new Evidence.Day(rise.since()),
            "batches", new Evidence.Count(ids.size()),
            "batches_before", new Evidence.Count(baseline),
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
