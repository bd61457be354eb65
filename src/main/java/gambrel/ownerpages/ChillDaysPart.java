package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.month.ChillDays;
import gambrel.month.Loss;
import gambrel.month.LossChart;
import gambrel.month.MonthRecords;
import gambrel.month.Shift;
import gambrel.shrink.Sample;
import gambrel.statement.ShrinkChapter;
import gambrel.statement.SummaryView.Counted;
import gambrel.wording.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Chill shrink by day of kill, like with like; bodies chilled for other times are named apart. */
final class ChillDaysPart {
  private final Wording wording;
  private final List<ChillDays> species;

  ChillDaysPart(MonthRecords records, Wording wording) {
    this.wording = wording;
    this.species =
        LossChart.of(records, Loss.CHILL).stream()
            .filter(LossChart::hasLimits)
            .flatMap(chart -> ChillDays.of(chart).stream())
            .toList();
  }

  /**
   * A column for each species, a row for each day on which one of them was killed: per cent alone,
   * since the bodies of a day are customers' and the shop's own.
   */
  ShrinkChapter.Chiller table() {
    var shown = species.stream().filter(days -> !days.baseline().isEmpty()).toList();
    var dates = new TreeSet<LocalDate>();
    shown.forEach(days -> days.month().forEach(point -> dates.add(point.day())));
    return new ShrinkChapter.Chiller(
        shown.stream().map(this::kind).toList(),
        dates.stream()
            .map(
                date ->
                    new ShrinkChapter.Day(
                        wording.formats().brief(date),
                        shown.stream().map(days -> cell(days, date)).toList()))
            .toList());
  }

  private static BigFraction usual(ChillDays days) {
    return Sample.of(days.baseline().stream().map(LossChart.Point::percent).toList()).mean();
  }

  private ShrinkChapter.Kind kind(ChillDays days) {
    return new ShrinkChapter.Kind(
        wording.say("species." + days.species().id()),
        wording.say("summary.chart.centre", wording.say("number.percent", two(usual(days)))));
  }

  private ShrinkChapter.Cell cell(ChillDays days, LocalDate date) {
    var of = days.month().stream().filter(point -> point.day().equals(date)).toList();
    if (of.isEmpty()) {
      return new ShrinkChapter.Cell(new Counted("", ""), false);
    }
    var ratio = Loss.CHILL.of(of.stream().map(LossChart.Point::account).toList());
    var percent = ratio.percent().orElseThrow();
    return new ShrinkChapter.Cell(
        new Counted(two(percent), wording.formats().count(ratio.bodies())),
        days.shift().filter(Shift::isMore).filter(s -> !date.isBefore(s.from())).isPresent());
  }

  private String two(BigFraction percent) {
    return wording.formats().number(Exact.round(percent, 2));
  }

  /** Within which hours bodies count as alike, and which ones do not. */
  List<String> notes() {
    var notes = new ArrayList<String>();
    for (var days : species) {
      String kind = wording.say("species." + days.species().id());
      notes.add(
          wording.say(
              "shrink.hours",
              kind,
              hours(days.hours().subtract(BigFraction.of(ChillDays.WINDOW))),
              hours(days.hours().add(BigFraction.of(ChillDays.WINDOW)))));
      if (!days.apart().isEmpty()) {
        notes.add(
            wording.say(
                "shrink.apart",
                kind,
                days.apart().stream().map(this::apart).collect(Collectors.joining(", "))));
      }
    }
    return notes;
  }

  private String apart(LossChart.Point point) {
    return wording.say(
        "shrink.apart.body",
        point.body(),
        point.account().balance().hoursChilled().map(this::hours).orElse("?"),
        two(point.percent()));
  }

  private String hours(BigFraction hours) {
    return wording.formats().number(Exact.round(hours, 0));
  }
}
