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
record FirstPart(MonthPage page) implements MonthPart {
  /** One of the five figures. */
  private record FiveRow(String label, Counted month, Counted yearAgo, Counted before) {}

  FirstPage view() {
    var words = new FindingWords(wording(), weights());
    var findings = page.report().findings();
    var rows =
        FirstPageRoom.fitting(
            findings.stream().map(words::row).toList(), records().settings().paper());
    int more = findings.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        findings.isEmpty() ? none() : "",
        more > 0 ? wording().counted("first.more", more) : "",
        five());
  }

  /** That nothing was found, or that there are too few bodies to find anything. */
  private String none() {
    boolean compared =
        Stream.of(report().chills(), report().benches())
            .flatMap(List::stream)
            .anyMatch(LossChart::hasLimits);
    return compared
        ? say("first.none")
        : wording().counted("first.few", records().baseline().killed().size());
  }

  private String counted() {
    var before = records().baseline();
    return say(
        "first.counted",
        count(month().killed().size()),
        count(month().cut().size()),
        count(before.killed().size()),
        count(before.cut().size()));
  }

  private List<TableView> five() {
    var month = records().month();
    var table =
        new TableBuilder<FiveRow>("five figures even short")
            .first("", FiveRow::label)
            .counted(formats().month(month), FiveRow::month)
            .counted(formats().month(month.minusMonths(12)), FiveRow::yearAgo)
            .counted(say("before"), FiveRow::before);
    var rows = Stream.concat(Stream.of(killed()), mainSpecies().stream().flatMap(this::ofSpecies));
    return table.rows(table.known(rows)).table();
  }

  private FiveRow killed() {
    return new FiveRow(
        say("first.killed"),
        new Counted(count(month().killed().size()), ""),
        new Counted(count(records().baseline().yearAgo().killed().size()), ""),
        new Counted(killedAMonth(), ""));
  }

  /** Bodies killed in a month on average, from the first month with one. */
  private String killedAMonth() {
    var months =
        records().baseline().months().stream().dropWhile(m -> m.killed().isEmpty()).toList();
    int killed = records().baseline().killed().size();
    return months.isEmpty()
        ? count(0)
        : say("first.a_month", number(BigFraction.of(killed, months.size()), 0));
  }

  /** The species with the most bodies; of several the first. */
  private Optional<Species> mainSpecies() {
    var bodies = month().bodies();
    return Stream.of(Species.values())
        .filter(species -> !MonthPart.like(bodies, species).isEmpty())
        .max(
            Comparator.comparing((Species species) -> MonthPart.like(bodies, species).size())
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
          var ratio = figure.of(MonthPart.like(bodies, species));
          return ratio
              .percent()
              .map(p -> new Counted(formats().percent(p), ofBodies(ratio.bodies())))
              .orElse(Counted.NONE);
        };
    var baseline = records().baseline();
    return new FiveRow(
        say(key, species(species)),
        counted.apply(List.of(month())),
        counted.apply(List.of(baseline.yearAgo())),
        counted.apply(baseline.months()));
  }
}
