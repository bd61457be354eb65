package gambrel.ownerpages;

import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.month.BodyFigures;
import gambrel.month.Finding;
import gambrel.month.Findings;
import gambrel.month.Loss;
import gambrel.month.LossChart;
import gambrel.month.MonthBodies;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.FirstPage;
import gambrel.statement.SummaryView.Counted;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The page that an owner reads in five minutes. */
final class FirstPart {
  private final MonthRecords records;
  private final Wording wording;
  private final FindingWords words;

  FirstPart(MonthRecords records, Wording wording, Places places) {
    this.records = records;
    this.wording = wording;
    this.words = new FindingWords(wording, places);
  }

  FirstPage page() {
    var findings = Findings.of(records);
    var rows =
        FirstPageRoom.fitting(
            findings.stream().map(this::row).toList(),
            records.night().shop().settings().paper());
    int more = findings.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        findings.isEmpty() ? none() : "",
        more > 0 ? wording.count("first.more", more, wording.formats().count(more)) : "",
        wording.formats().month(records.month()),
        wording.formats().month(records.month().minusMonths(12)),
        figures());
  }

  /** That nothing was found is only said where something could have been. */
  private String none() {
    boolean compared =
        LossChart.of(records, Loss.CHILL).stream().anyMatch(LossChart::hasLimits)
            || LossChart.of(records, Loss.BENCH).stream().anyMatch(LossChart::hasLimits);
    int before = records.baseline().killed().size();
    return compared
        ? wording.say("first.none")
        : wording.count("first.few", before, count(before));
  }

  private String counted() {
    var before = records.baseline();
    return wording.say(
        "first.counted",
        count(records.bodies().killed().size()),
        count(records.bodies().cut().size()),
        count(before.killed().size()),
        count(before.cut().size()));
  }

  private FirstPage.Row row(Finding finding) {
    return new FirstPage.Row(
        words.seen(finding), words.sure(finding), words.next(finding), words.worth(finding));
  }

  private List<FirstPage.Figure> figures() {
    var figures = new ArrayList<FirstPage.Figure>();
    figures.add(
        new FirstPage.Figure(
            wording.say("first.killed"),
            new Counted(count(records.bodies().killed().size()), ""),
            new Counted(count(records.baseline().yearAgo().killed().size()), ""),
            new Counted(killedAMonth(), "")));
    main().ifPresent(species -> figures.addAll(figures(species)));
    figures.removeIf(figure -> figure.month().text().isEmpty() && figure.before().text().isEmpty());
    return figures;
  }

  /** Beside a month's number stands a month's, counted from the first that killed any. */
  private String killedAMonth() {
    var months =
        records.baseline().months().stream().dropWhile(m -> m.killed().isEmpty()).toList();
    int killed = months.stream().mapToInt(month -> month.killed().size()).sum();
    return months.isEmpty()
        ? count(0)
        : wording.say(
            "first.a_month",
            wording.formats().number(Exact.round(BigFraction.of(killed, months.size()), 0)));
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

  private List<FirstPage.Figure> figures(Species species) {
    return List.of(
        figure("first.chill", species, MonthBodies::killed, Loss.CHILL::of),
        figure("first.ageing", species, MonthBodies::killed, Loss.AGEING::of),
        figure("first.bench", species, MonthBodies::cut, Loss.BENCH::of),
        figure("first.home", species, MonthBodies::cut, BodyFigures.TAKE_HOME::of));
  }

  private FirstPage.Figure figure(
      String key,
      Species species,
      Function<MonthBodies, List<BodyAccount>> of,
      Function<Collection<BodyAccount>, Ratio> figure) {
    var before =
        records.baseline().months().stream().flatMap(m -> of.apply(m).stream()).toList();
    return new FirstPage.Figure(
        wording.say(key, wording.say("species." + species.id())),
        counted(figure.apply(like(of.apply(records.bodies()), species))),
        counted(figure.apply(like(of.apply(records.baseline().yearAgo()), species))),
        counted(figure.apply(like(before, species))));
  }

  private static List<BodyAccount> like(List<BodyAccount> bodies, Species species) {
    return bodies.stream().filter(a -> a.body().species() == species).toList();
  }

  private Counted counted(Ratio ratio) {
    return ratio
        .percent()
        .map(p -> new Counted(wording.formats().percent(p), count(ratio.bodies())))
        .orElseGet(() -> new Counted("", ""));
  }

  private String count(long number) {
    return wording.formats().count(number);
  }
}
