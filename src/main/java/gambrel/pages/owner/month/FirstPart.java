package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Finding;
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

/** The page that an owner reads in five minutes. */
final class FirstPart {
  private final MonthPage page;
  private final MonthRecords records;
  private final FindingWords words;

  FirstPart(MonthPage page) {
    this.page = page;
    this.records = page.records();
    this.words = new FindingWords(page.wording(), page.places());
  }

  FirstPage page() {
    var findings = page.report().findings();
    var rows =
        FirstPageRoom.fitting(
            findings.stream().map(this::row).toList(), records.settings().paper());
    int more = findings.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        findings.isEmpty() ? none() : "",
        more > 0 ? page.counted("first.more", more) : "",
        five());
  }

  /** That nothing was found is only said where something could have been. */
  private String none() {
    boolean compared =
        Stream.of(page.parts().chills(), page.parts().benches())
            .flatMap(List::stream)
            .anyMatch(LossChart::hasLimits);
    return compared
        ? page.say("first.none")
        : page.counted("first.few", records.baseline().killed().size());
  }

  private String counted() {
    var before = records.baseline();
    return page.say(
        "first.counted",
        page.count(records.bodies().killed().size()),
        page.count(records.bodies().cut().size()),
        page.count(before.killed().size()),
        page.count(before.cut().size()));
  }

  private FirstPage.Row row(Finding finding) {
    return new FirstPage.Row(
        words.seen(finding), words.sure(finding), words.next(finding), words.worth(finding));
  }

  private List<TableView> five() {
    var month = records.month();
    var table =
        new TableBuilder("five", "even short")
            .first("")
            .counted(page.formats().month(month))
            .counted(page.formats().month(month.minusMonths(12)))
            .counted(page.say("before"));
    table.row(
        page.say("first.killed"),
        new Counted(page.count(records.bodies().killed().size()), ""),
        new Counted(page.count(records.baseline().yearAgo().killed().size()), ""),
        new Counted(killedAMonth(), ""));
    main()
        .ifPresent(
            species -> {
              row(table, "first.chill", species, MonthBodies::killed, BodyFigure.CHILL);
              row(table, "first.ageing", species, MonthBodies::killed, BodyFigure.AGEING);
              row(table, "first.bench", species, MonthBodies::cut, BodyFigure.BENCH);
              row(table, "first.home", species, MonthBodies::cut, BodyFigure.TAKE_HOME);
            });
    return table.table();
  }

  /** Beside a month's number stands a month's, counted from the first that killed any. */
  private String killedAMonth() {
    var months = records.baseline().months().stream().dropWhile(m -> m.killed().isEmpty()).toList();
    int killed = months.stream().mapToInt(month -> month.killed().size()).sum();
    return months.isEmpty()
        ? page.count(0)
        : page.say("first.a_month", page.number(BigFraction.of(killed, months.size()), 0));
  }

  /** The species of which most were killed and cut. */
  private Optional<Species> main() {
    var bodies = records.bodies().bodies();
    return Stream.of(Species.values())
        .filter(s -> bodies.stream().anyMatch(a -> a.body().species() == s))
        .max(
            Comparator.comparingLong(
                    (Species s) -> bodies.stream().filter(a -> a.body().species() == s).count())
                .thenComparing(Comparator.reverseOrder()));
  }

  /** A row, unless the figure is known neither in the month nor in the twelve before. */
  private void row(
      TableBuilder table,
      String key,
      Species species,
      Function<MonthBodies, List<MonthBody>> of,
      BodyFigure figure) {
    var all = records.baseline().months().stream().flatMap(m -> of.apply(m).stream()).toList();
    var month = counted(figure, of.apply(records.bodies()), species);
    var before = counted(figure, all, species);
    if (!month.text().isEmpty() || !before.text().isEmpty()) {
      var yearAgo = counted(figure, of.apply(records.baseline().yearAgo()), species);
      table.row(page.say(key, page.species(species)), month, yearAgo, before);
    }
  }

  private Counted counted(BodyFigure figure, List<MonthBody> bodies, Species species) {
    var ratio = figure.of(bodies.stream().filter(b -> b.body().species() == species).toList());
    return ratio
        .percent()
        .map(p -> new Counted(page.formats().percent(p), page.ofBodies(ratio.bodies())))
        .orElse(Counted.NONE);
  }
}
