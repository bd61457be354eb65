package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.measure.Weight;
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
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Chill shrink by day of kill, like with like; bodies chilled for other times are named apart. */
final class ChillDaysPart {
  private final Wording wording;
  private final Places places;
  private final List<ChillDays> species;

  ChillDaysPart(MonthRecords records, Wording wording, Places places) {
    this.wording = wording;
    this.places = places;
    this.species =
        LossChart.of(records, Loss.CHILL).stream()
            .filter(LossChart::hasLimits)
            .flatMap(chart -> ChillDays.of(chart).stream())
            .toList();
  }

  List<ShrinkChapter.ChillDay> rows() {
    var rows = new ArrayList<ShrinkChapter.ChillDay>();
    for (var days : species) {
      var byDay =
          days.month().stream()
              .collect(
                  Collectors.groupingBy(
                      LossChart.Point::day, TreeMap::new, Collectors.toList()));
      var percents = percents(days.baseline());
      if (!percents.isEmpty()) {
        var usual = Sample.of(percents).mean();
        byDay.forEach((day, of) -> rows.add(row(days, day, of, usual)));
      }
    }
    return rows;
  }

  private static List<BigFraction> percents(List<LossChart.Point> points) {
    return points.stream().map(LossChart.Point::percent).toList();
  }

  private ShrinkChapter.ChillDay row(
      ChillDays days, LocalDate day, List<LossChart.Point> of, BigFraction usual) {
    var ratio = Loss.CHILL.of(of.stream().map(LossChart.Point::account).toList());
    var percent = ratio.percent().orElseThrow();
    var more = ratio.whole().fraction().multiply(percent.subtract(usual)).divide(100);
    return new ShrinkChapter.ChillDay(
        wording.formats().brief(day),
        wording.say("species." + days.species().id()),
        new Counted(two(percent), wording.formats().count(ratio.bodies())),
        two(usual),
        places.hung(Optional.of(Weight.of(more))),
        days.shift().filter(Shift::isMore).filter(s -> !day.isBefore(s.from())).isPresent());
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
