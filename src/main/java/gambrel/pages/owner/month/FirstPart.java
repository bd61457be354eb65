package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.loss.LossChart;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.FirstPage;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The page that an owner reads in five minutes: findings, and five figures beside last year's. */
record FirstPart(MonthPage page) {
  /**
   * One of the five figures.
   *
   * @param label what it is
   * @param month of the month
   * @param yearAgo of the same month a year ago
   * @param before of the twelve months before
   */
  private record FiveRow(String label, Counted month, Counted yearAgo, Counted before) {}

  FirstPage view() {
    var words = new FindingWords(page.wording(), page.weights());
    var findings = page.report().findings();
    var rows =
        FirstPageRoom.fitting(
            findings.stream().map(words::row).toList(), page.records().settings().paper());
    int more = findings.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        findings.isEmpty() ? none() : "",
        more > 0 ? page.wording().counted("first.more", more) : "",
        five());
  }

  /** That nothing was found, or that there are too few bodies to find anything. */
  private String none() {
    boolean compared =
        Stream.of(page.parts().chills(), page.parts().benches())
            .flatMap(List::stream)
            .anyMatch(LossChart::hasLimits);
    return compared
        ? page.say("first.none")
        : page.wording().counted("first.few", page.records().baseline().killed().size());
  }

  private String counted() {
    var before = page.records().baseline();
    return page.say(
        "first.counted",
        page.count(page.month().killed().size()),
        page.count(page.month().cut().size()),
        page.count(before.killed().size()),
        page.count(before.cut().size()));
  }

  private List<TableView> five() {
    var month = page.records().month();
    var table =
        new TableBuilder<FiveRow>("five figures even short")
            .first("", FiveRow::label)
            .counted(page.formats().month(month), FiveRow::month)
            .counted(page.formats().month(month.minusMonths(12)), FiveRow::yearAgo)
            .counted(page.say("before"), FiveRow::before);
    var rows = Stream.concat(Stream.of(killed()), mainSpecies().stream().flatMap(this::ofSpecies));
    return table.rows(table.known(rows)).table();
  }

  private FiveRow killed() {
    return new FiveRow(
        page.say("first.killed"),
        new Counted(page.count(page.month().killed().size()), ""),
        new Counted(page.count(page.records().baseline().yearAgo().killed().size()), ""),
        new Counted(killedAMonth(), ""));
  }

  /** Bodies killed in a month on average, from the first month with one. */
  private String killedAMonth() {
    var months =
        page.records().baseline().months().stream().dropWhile(m -> m.killed().isEmpty()).toList();
    int killed = page.records().baseline().killed().size();
    return months.isEmpty()
        ? page.count(0)
        : page.say("first.a_month", page.number(BigFraction.of(killed, months.size()), 0));
  }

  /** The species with the most bodies; of several the first. */
  private Optional<Species> mainSpecies() {
    var bodies = page.month().bodies();
    return Stream.of(Species.values())
        .filter(species -> !MonthPage.like(bodies, species).isEmpty())
        .max(
            Comparator.comparing((Species species) -> MonthPage.like(bodies, species).size())
                .thenComparing(Comparator.reverseOrder()));
  }

  private Stream<FiveRow> ofSpecies(Species species) {
    return Stream.of(
        row("first.chill", species, MonthBodies::killed, BodyFigure.CHILL),
        row("first.ageing", species, MonthBodies::killed, BodyFigure.AGEING),
        row("first.bench", species, MonthBodies::cut, BodyFigure.BENCH),
        row("first.home", species, MonthBodies::cut, BodyFigure.TAKE_HOME));
  }

  private FiveRow row(
      String key,
      Species species,
      Function<MonthBodies, List<MonthBody>> which,
      BodyFigure figure) {
    Function<List<MonthBodies>, Counted> counted =
        months -> {
          var bodies = months.stream().flatMap(month -> which.apply(month).stream()).toList();
          var ratio = figure.of(MonthPage.like(bodies, species));
          return ratio
              .percent()
              .map(p -> new Counted(page.formats().percent(p), page.ofBodies(ratio.bodies())))
              .orElse(Counted.NONE);
        };
    var baseline = page.records().baseline();
    return new FiveRow(
        page.say(key, page.species(species)),
        counted.apply(List.of(page.month())),
        counted.apply(List.of(baseline.yearAgo())),
        counted.apply(baseline.months()));
  }
}
