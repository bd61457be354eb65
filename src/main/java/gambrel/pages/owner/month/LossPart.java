package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyGroup.Split;
import gambrel.insight.month.figures.Completeness;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.month.loss.ChillDays;
import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.cuts.Species;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a species lost in the chiller and on the bench: charts, and by day and place. */
record LossPart(MonthPart.Page page) implements MonthPart {
  /** Another species than the main one needs as many bodies in the month for charts. */
  private static final int ENOUGH = 5;

  /** A day or place, with what was lost there in the chiller and on the bench. */
  private record Place(String name, Optional<MonthFigure> chill, Optional<MonthFigure> bench) {}

  /** The main species. */
  List<PartView> main() {
    return mainSpecies().stream().map(this::part).filter(part -> !part.isEmpty()).toList();
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
    var notes = new ArrayList<String>();
    charts(species).filter(chart -> !chart.hasLimits()).map(this::tooFew).forEach(notes::add);
    report().chillDays().stream()
        .filter(days -> days.species() == species && days.chart().hasLimits())
        .forEach(days -> hours(days, notes));
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

  /** What was lost by day, chiller, scale and boner; of all owners' bodies together. */
  private List<TableView> places(Species species) {
    var table =
        new TableBuilder<Place>("places figures even")
            .headsAbove(
                List.of(
                    new Cell("", TableBuilder.FIRST),
                    new Cell(say("in_the_chiller"), "number titled", 4),
                    new Cell(say("on_the_bench"), "number titled", 4)))
            .first("", Place::name, "titled");
    add(table, BodyFigure.CHILL);
    add(table, BodyFigure.BENCH);
    table.group(
        say("places.day"),
        Stream.concat(
                figures(species, BodyFigure.CHILL, Split.KILLED),
                figures(species, BodyFigure.BENCH, Split.CUT))
            .map(figure -> group(figure).name())
            .distinct()
            .sorted()
            .map(
                day ->
                    new Place(
                        formats().brief(LocalDate.parse(day)),
                        named(figures(species, BodyFigure.CHILL, Split.KILLED), day),
                        named(figures(species, BodyFigure.BENCH, Split.CUT), day)))
            .toList());
    for (var split : List.of(Split.CHILLER, Split.HUNG_SCALE)) {
      table.group(
          say("places." + split.name().toLowerCase(Locale.ROOT)),
          figures(species, BodyFigure.CHILL, split)
              .map(f -> new Place(group(f).name(), Optional.of(f), Optional.empty()))
              .toList());
    }
    for (var split : List.of(Split.BENCH_SCALE, Split.BONER)) {
      table.group(
          say("places." + split.name().toLowerCase(Locale.ROOT)),
          figures(species, BodyFigure.BENCH, split)
              .map(f -> new Place(group(f).name(), Optional.empty(), Optional.of(f)))
              .toList());
    }
    return table.table(say("places.read"));
  }

  private static BodyGroup group(MonthFigure figure) {
    return (BodyGroup) figure.group();
  }

  private Stream<MonthFigure> figures(Species species, BodyFigure loss, Split split) {
    return report()
        .figures(FigureName.percentOf(loss))
        .filter(figure -> figure.species().filter(species::equals).isPresent())
        .filter(figure -> group(figure).split() == split);
  }

  private static Optional<MonthFigure> named(Stream<MonthFigure> figures, String name) {
    return figures.filter(figure -> group(figure).name().equals(name)).findFirst();
  }

  /** Adds the columns of a loss: bodies, weight, per cent, and the usual per cent. */
  private void add(TableBuilder<Place> table, BodyFigure loss) {
    table
        .number(say("number"), place -> figure(place, loss).map(f -> count(f.bodies())).orElse(""))
        .number(
            unit(),
            place ->
                weights()
                    .lost(
                        loss,
                        figure(place, loss)
                            .flatMap(f -> report().find(FigureName.weightOf(loss), f))))
        .column(
            new Cell(say("percent"), TableBuilder.NUMBER),
            place -> List.of(new Cell(percent(place, loss), style(place, loss))))
        .number(
            say("usual"),
            place ->
                figure(place, loss)
                    .flatMap(f -> f.before().spread())
                    .map(Spread::median)
                    .map(median -> number(median, 2))
                    .orElse(""));
  }

  private static Optional<MonthFigure> figure(Place place, BodyFigure loss) {
    return loss == BodyFigure.CHILL ? place.chill() : place.bench();
  }

  private String percent(Place place, BodyFigure loss) {
    return figure(place, loss)
        .flatMap(MonthFigure::value)
        .map(value -> number(value, 2))
        .orElse("");
  }

  /** Bold if a finding accuses the day or place. */
  private String style(Place place, BodyFigure loss) {
    boolean accused =
        figure(place, loss)
            .filter(figure -> report().findings().stream().anyMatch(f -> isAbout(f, figure, loss)))
            .isPresent();
    return TableBuilder.NUMBER + (accused ? " marked" : "");
  }

  private static boolean isAbout(Finding finding, MonthFigure figure, BodyFigure loss) {
    var group = group(figure);
    boolean day = group.split() == Split.KILLED || group.split() == Split.CUT;
    return switch (finding.kind()) {
      case CHILLER, BENCH, SCALE ->
          loss == (finding.kind() == Finding.Kind.CHILLER ? BodyFigure.CHILL : BodyFigure.BENCH)
              && (day
                  ? finding.species().equals(figure.species())
                      && finding
                          .since()
                          .filter(since -> !LocalDate.parse(group.name()).isBefore(since))
                          .isPresent()
                  : finding.accused().contains(group.name()));
      case BONER -> group.split() == Split.BONER && finding.accused().contains(group.name());
      default -> false;
    };
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
