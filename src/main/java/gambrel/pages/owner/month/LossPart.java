package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.Completeness;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.loss.ChillDays;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.statistics.Mean;
import gambrel.pages.owner.month.MonthPart.OwnedSpecies;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.measure.Groups;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Weight lost in sum, and in the chiller by day. */
record LossPart(MonthPart.Page page) implements MonthPart {
  /** A species needs as many bodies in the month for a chart beside that of the main species. */
  private static final int ENOUGH = 5;

  /** Losses by owner and species, and the charts. */
  PartView lost() {
    var table = new TableBuilder<OwnedSpecies>("lost figures even short");
    table.first("", of -> species(of.species()), "kinds");
    add(table, "chill_shrink", BodyFigure.CHILL);
    add(table, "ageing_shrink", BodyFigure.AGEING);
    add(table, "bench_loss_of_boning", BodyFigure.BENCH);
    var sums = byOwner(table).table(say("bench_loss_explained"));
    var charts =
        charts()
            .filter(LossChart::hasLimits)
            .map(chart -> new LossDrawing(chart, records().month(), wording()).view())
            .toList();
    var notes = new ArrayList<String>();
    if (!sums.isEmpty() || !charts.isEmpty()) {
      charts().filter(chart -> !chart.hasLimits()).map(this::tooFew).forEach(notes::add);
      chillDays().forEach(days -> hours(days, notes));
    }
    return PartView.of(say("weight_lost"), sums, notes).with(charts);
  }

  private void add(TableBuilder<OwnedSpecies> table, String head, BodyFigure loss) {
    table
        .counted(say(head), of -> counted(figure(FigureName.percentOf(loss), of)))
        .number(unit(), of -> weights().lost(loss, figure(FigureName.weightOf(loss), of)));
  }

  /** The charts of chill shrink and bench loss: of the main species and of others with enough. */
  private Stream<LossChart> charts() {
    return Groups.inOrder(report().charts().stream(), LossChart::loss).values().stream()
        .flatMap(
            charts -> {
              var sorted = new ArrayList<>(charts);
              sorted.sort(Comparator.comparingInt(chart -> -chart.ofMonth().size()));
              return sorted.stream()
                  .filter(chart -> chart == sorted.get(0) || chart.ofMonth().size() >= ENOUGH);
            });
  }

  /** That a species has no chart yet, since the twelve months before have too few bodies. */
  private String tooFew(LossChart chart) {
    return wording()
        .count(
            "summary.chart.few." + chart.loss().id(),
            chart.baseline(),
            species(chart.species()),
            count(chart.baseline()));
  }

  private List<ChillDays> chillDays() {
    return report().chillDays().stream().filter(days -> days.chart().hasLimits()).toList();
  }

  /** The hours in the chiller within which bodies are compared, and the bodies outside them. */
  private void hours(ChillDays days, List<String> notes) {
    var window = BigFraction.of(ChillDays.WINDOW);
    String species = species(days.species());
    String from = number(days.hours().subtract(window), 0);
    notes.add(say("shrink.hours", species, from, number(days.hours().add(window), 0)));
    if (!days.apart().isEmpty()) {
      var apart = days.apart().stream().map(this::apart).collect(Collectors.joining(", "));
      notes.add(say("shrink.apart", species, apart));
    }
  }

  private String apart(LossChart.Point point) {
    var hours = point.account().balance().hoursChilled();
    return say(
        "shrink.apart.body",
        point.body(),
        hours.map(h -> number(h, 0)).orElse("?"),
        number(point.percent(), 2));
  }

  /**
   * Chill shrink with a column for each species and a row for each day on which one was killed.
   * Percentages only, since the bodies of one day belong to customers and to the shop.
   */
  PartView chiller() {
    var shown = chillDays().stream().filter(days -> !days.baseline().isEmpty()).toList();
    var table = new TableBuilder<LocalDate>("daily figures even");
    table.first(say("killed"), formats()::brief);
    var above = new ArrayList<>(List.of(new Cell("", TableBuilder.FIRST)));
    for (var days : shown) {
      var head = new Cell(label("lost", say("percent")), TableBuilder.NUMBER, 2);
      table.column(head, date -> day(days, date));
      above.add(new Cell(usual(days), "number titled", 2));
    }
    var dates = shown.stream().flatMap(days -> days.month().stream()).map(LossChart.Point::day);
    table.headsAbove(above).rows(dates.distinct().sorted().toList());
    return PartView.withRoom(say("chiller_by_day"), table.table(), List.of());
  }

  private String usual(ChillDays days) {
    var usual = Mean.of(days.baseline().stream().map(LossChart.Point::percent).toList());
    return species(days.species())
        + ", "
        + say("summary.chart.centre", say("number.percent", number(usual, 2)));
  }

  /** What a species lost of the bodies killed on a day; marked if a finding is about the day. */
  private List<Cell> day(ChillDays days, LocalDate date) {
    var bodies =
        days.month().stream()
            .filter(point -> point.day().equals(date))
            .map(LossChart.Point::account)
            .toList();
    var ratio = BodyFigure.CHILL.of(bodies);
    boolean marked =
        report().findings().stream()
            .filter(finding -> finding.kind() == Finding.Kind.CHILLER)
            .anyMatch(
                finding -> finding.subjects().stream().anyMatch(MonthBody.ids(bodies)::contains));
    return new Counted(
            ratio.percent().map(p -> number(p, 2)).orElse(""),
            ratio.isKnown() ? ofBodies(ratio.bodies()) : "")
        .cells(marked ? " marked" : "");
  }

  /** How many bodies have which weight. */
  PartView known() {
    var table =
        new TableBuilder<Completeness>("facts")
            .column("", "label", weight -> say("weights." + weight.what().id()))
            .words("", weight -> say("weights.of", count(weight.known()), count(weight.of())))
            .rows(report().completeness().stream().filter(weight -> weight.of() > 0).toList());
    return PartView.kept(say("weights_known"), table.table(), List.of());
  }
}
