package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyGroup;
import gambrel.insight.month.bodies.Loss;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.insight.month.loss.ChillDays;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.month.loss.MeanShift;
import gambrel.insight.statistics.Sample;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.cuts.Species;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Weight lost in sum, and in the chiller by day. */
final class LossPart {
  private static final List<Loss> OF_BODIES = List.of(Loss.CHILL, Loss.AGEING, Loss.BENCH);

  private final MonthPage page;
  private final List<ChillDays> chillDays;

  LossPart(MonthPage page) {
    this.page = page;
    this.chillDays =
        page.parts().chillDays().stream().filter(days -> days.chart().hasLimits()).toList();
  }

  /** Losses by owner and species, and the charts. */
  PartView lost() {
    var charts = new ChartPart(page);
    var sums = sums();
    var shown = charts.charts();
    var notes = new ArrayList<>(charts.few());
    notes.addAll(hours());
    return new PartView(
        page.say("weight_lost"),
        "wide chapter",
        false,
        false,
        sums,
        sums.isEmpty() && shown.isEmpty() ? List.of() : notes,
        shown);
  }

  private List<TableView> sums() {
    var table = new TableBuilder("lost", "even short").first("", "kinds");
    for (String head : List.of("chill_shrink", "ageing_shrink", "bench_loss_of_boning")) {
      table.counted(page.say(head)).number(page.unit());
    }
    for (var whose : Ownership.values()) {
      var rows = Stream.of(Species.values()).flatMap(s -> sums(whose, s).stream()).toList();
      if (!rows.isEmpty()) {
        table.group(page.owner(whose));
        rows.forEach(table::row);
      }
    }
    return table.table(page.say("bench_loss_explained"));
  }

  /** The cells of a species; empty if none of its losses is known. */
  private Optional<Object[]> sums(Ownership whose, Species species) {
    var cells = new ArrayList<Object>(List.of(page.species(species)));
    for (var loss : OF_BODIES) {
      cells.add(page.counted(find(FigureName.percentOf(loss), whose, species)));
      cells.add(page.weight(loss, find(FigureName.weightOf(loss), whose, species)));
    }
    return cells.subList(1, cells.size()).stream().allMatch(LossPart::isBlank)
        ? Optional.empty()
        : Optional.of(cells.toArray());
  }

  private static boolean isBlank(Object cell) {
    return cell.equals("") || cell.equals(Counted.NONE);
  }

  private Optional<MonthFigure> find(FigureName name, Ownership whose, Species species) {
    return page.report().figures().find(name, whose, species, BodyGroup.ALL);
  }

  /**
   * A column for each species, a row for each day on which one of them was killed: per cent alone,
   * since the bodies of a day are customers' and the shop's own.
   */
  PartView chiller() {
    var shown = chillDays.stream().filter(days -> !days.baseline().isEmpty()).toList();
    var dates = new TreeSet<LocalDate>();
    shown.forEach(days -> days.month().forEach(point -> dates.add(point.day())));
    var table = new TableBuilder("daily", "even").first("");
    shown.forEach(days -> table.counted(usual(days), "titled"));
    table.nextHeads().first(page.say("killed"));
    shown.forEach(days -> table.counted(page.label("lost", page.say("percent"))));
    for (var date : dates) {
      var cells = new ArrayList<>(List.of(new Cell(page.formats().brief(date), "first")));
      shown.forEach(days -> cells.addAll(day(days, date)));
      table.add("", cells);
    }
    return PartView.withRoom(page.say("chiller_by_day"), table.table(), List.of());
  }

  private String usual(ChillDays days) {
    var usual = Sample.of(days.baseline().stream().map(LossChart.Point::percent).toList()).mean();
    return page.species(days.species())
        + ", "
        + page.say("summary.chart.centre", page.say("number.percent", page.number(usual, 2)));
  }

  /** What a species lost that was killed on a day; marked if it belongs to a finding. */
  private List<Cell> day(ChillDays days, LocalDate date) {
    var bodies =
        days.month().stream()
            .filter(point -> point.day().equals(date))
            .map(LossChart.Point::account)
            .toList();
    var ratio = Loss.CHILL.figure().of(bodies);
    boolean marked =
        days.shift().filter(MeanShift::isMore).filter(s -> !date.isBefore(s.from())).isPresent();
    return List.of(
        new Cell(
            ratio.percent().map(p -> page.number(p, 2)).orElse(""),
            marked ? "number marked" : "number"),
        new Cell(ratio.isKnown() ? page.ofBodies(ratio.bodies()) : "", "number counted"));
  }

  /** Within which hours bodies count as alike, and which ones do not. */
  private List<String> hours() {
    var notes = new ArrayList<String>();
    var window = BigFraction.of(ChillDays.WINDOW);
    for (var days : chillDays) {
      String species = page.species(days.species());
      notes.add(
          page.say(
              "shrink.hours",
              species,
              page.number(days.hours().subtract(window), 0),
              page.number(days.hours().add(window), 0)));
      if (!days.apart().isEmpty()) {
        var apart = days.apart().stream().map(this::apart).collect(Collectors.joining(", "));
        notes.add(page.say("shrink.apart", species, apart));
      }
    }
    return notes;
  }

  private String apart(LossChart.Point point) {
    var hours = point.account().balance().hoursChilled();
    return page.say(
        "shrink.apart.body",
        point.body(),
        hours.map(h -> page.number(h, 0)).orElse("?"),
        page.number(point.percent(), 2));
  }

  /** How many bodies have which weight. */
  PartView known() {
    var table = new TableBuilder("facts", "");
    for (var weight : page.parts().completeness()) {
      if (weight.of() > 0) {
        String of = page.say("weights.of", page.count(weight.known()), page.count(weight.of()));
        table.add(
            "",
            List.of(
                new Cell(page.say("weights." + weight.what().id()), "label"), new Cell(of, "")));
      }
    }
    return PartView.kept(page.say("weights_known"), table.list(), List.of());
  }
}
