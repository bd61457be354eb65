package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyGroup.Split;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.cuts.Species;
import gambrel.trade.shop.Settings.Paper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a species lost in the chiller and on the bench: charts, and by day and place. */
record LossPart(MonthPart.Page page) implements MonthPart {
  /** Another species than the main one needs as many bodies in the month for charts. */
  private static final int ENOUGH = 5;

  /** The most rows by day and place, so that they stand on one page with two charts. */
  private static final Map<Paper, Integer> ROWS = Map.of(Paper.A4, 28, Paper.LETTER, 22);

  /** Columns of each loss. */
  private static final int WIDTH = 5;

  /** Beside the rows of the other loss. */
  private static final Cell NONE = new Cell("", "none");

  /** A title, or a day or place with what was lost there in the chiller or on the bench. */
  private record Place(String name, Optional<MonthFigure> lost) {}

  /** The main species. */
  List<PartView> main() {
    return mainSpecies().stream().map(this::part).toList();
  }

  /** The other species with enough bodies. */
  List<PartView> others() {
    return Stream.of(Species.values())
        .filter(species -> mainSpecies().filter(species::equals).isEmpty())
        .filter(species -> charts(species).anyMatch(chart -> chart.ofMonth().size() >= ENOUGH))
        .map(this::part)
        .toList();
  }

  private Stream<LossChart> charts(Species species) {
    return report().charts().stream().filter(chart -> chart.species() == species);
  }

  private PartView part(Species species) {
    var drawn =
        charts(species)
            .filter(LossChart::hasLimits)
            .map(chart -> new LossDrawing(chart, records().month(), wording()).view())
            .toList();
    var notes = charts(species).filter(chart -> !chart.hasLimits()).map(this::tooFew).toList();
    return PartView.of(say("losses", wording().kind(species)), places(species), notes).with(drawn);
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

  /**
   * What was lost in the chiller, and beside it on the bench, by day and place; of all owners'
   * bodies together.
   */
  private List<TableView> places(Species species) {
    var allChill = places(species, BodyFigure.CHILL);
    var allBench = places(species, BodyFigure.BENCH);
    var chill = fitting(allChill);
    var bench = fitting(allBench);
    var table =
        new TableBuilder<Integer>("places figures")
            .headsAbove(
                List.of(
                    new Cell(say("in_the_chiller"), "first titled", WIDTH),
                    new Cell(say("on_the_bench"), "titled beside", WIDTH)));
    add(table, "first", chill, BodyFigure.CHILL);
    add(table, "beside", bench, BodyFigure.BENCH);
    IntStream.range(0, Math.max(chill.size(), bench.size())).forEach(row -> table.row("", row));
    var remarks = new ArrayList<>(List.of(say("places.read")));
    if (chill.size() < allChill.size() || bench.size() < allBench.size()) {
      remarks.add(say("places.most"));
    }
    return table.table(remarks);
  }

  /** Places without the days on which least was lost, if there are too many for a page. */
  private List<Place> fitting(List<Place> all) {
    var least =
        all.stream()
            .filter(place -> place.lost().filter(lost -> isDay(group(lost).split())).isPresent())
            .sorted(Comparator.comparing(place -> place.lost().get().value().orElseThrow()))
            .limit(Math.max(0, all.size() - ROWS.get(records().settings().paper())))
            .toList();
    return all.stream().filter(place -> !least.contains(place)).toList();
  }

  /** The places of a loss, those of each kind below a title. */
  private List<Place> places(Species species, BodyFigure loss) {
    var places = new ArrayList<Place>();
    for (var split : Split.places(loss)) {
      var lost =
          report()
              .figures(FigureName.percentOf(loss))
              .filter(figure -> figure.species().filter(species::equals).isPresent())
              .filter(figure -> group(figure).split() == split)
              .toList();
      if (!lost.isEmpty()) {
        places.add(new Place(say("places." + title(split)), Optional.empty()));
        lost.forEach(figure -> places.add(new Place(name(group(figure)), Optional.of(figure))));
      }
    }
    return places;
  }

  private static String title(Split split) {
    return isDay(split) ? split.id() : split.name().toLowerCase(Locale.ROOT);
  }

  private static boolean isDay(Split split) {
    return split == Split.KILLED || split == Split.CUT;
  }

  private String name(BodyGroup group) {
    return isDay(group.split()) ? formats().brief(LocalDate.parse(group.name())) : group.name();
  }

  private static BodyGroup group(MonthFigure figure) {
    return (BodyGroup) figure.group();
  }

  /** Adds the columns of a loss: name, bodies, weight, per cent, and the usual per cent. */
  private void add(
      TableBuilder<Integer> table, String classes, List<Place> places, BodyFigure loss) {
    table.column(
        new Cell("", classes),
        row -> List.of(row < places.size() ? name(places.get(row), classes) : NONE));
    figure(table, places, say("number"), lost -> count(lost.bodies()));
    figure(
        table,
        places,
        unit(),
        lost -> weights().lost(loss, report().find(FigureName.weightOf(loss), lost)));
    figure(table, places, say("percent"), lost -> lost.value().map(v -> number(v, 2)).orElse(""));
    figure(
        table,
        places,
        say("usual"),
        lost -> lost.before().spread().map(spread -> number(spread.median(), 2)).orElse(""));
  }

  private static Cell name(Place place, String classes) {
    return new Cell(place.name(), place.lost().isPresent() ? classes : classes + " titled");
  }

  private static void figure(
      TableBuilder<Integer> table,
      List<Place> places,
      String head,
      Function<MonthFigure, String> text) {
    table.column(
        new Cell(head, TableBuilder.NUMBER),
        row -> List.of(row < places.size() ? figure(places.get(row), text) : NONE));
  }

  private static Cell figure(Place place, Function<MonthFigure, String> text) {
    return new Cell(place.lost().map(text).orElse(""), TableBuilder.NUMBER);
  }
}
