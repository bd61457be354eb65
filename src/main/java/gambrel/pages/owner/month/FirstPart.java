package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.loss.LossChart;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.FirstPage;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.shop.Settings.Paper;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The page that an owner reads in five minutes: findings, and five figures beside last year's. */
record FirstPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST = 10;
  private static final Map<Paper, Integer> LINES = Map.of(Paper.A4, 44, Paper.LETTER, 39);
  private static final int SEEN_A_LINE = 54;
  private static final int NEXT_A_LINE = 36;

  /** One of the five figures. */
  private record FiveRow(String label, Function<MonthBodies, Counted> figure) {}

  FirstPage view() {
    var findings = page.report().findings();
    var rows = fitting();
    int more = findings.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        findings.isEmpty() ? none() : "",
        more > 0 ? wording().counted("first.more", more) : "",
        five());
  }

  /** The findings that stand on the page. */
  List<FirstPage.Row> fitting() {
    var words = new FindingWords(wording(), weights());
    var rows = report().findings().stream().map(words::row).toList();
    return fitting(rows, records().settings().paper());
  }

  /**
   * The first rows that have room, one at least, so that the five figures still fit on the page:
   * ten at most, fewer if they need more lines. Lines are estimated from the number of letters, by
   * the letters that fill a line in the longest language.
   */
  static List<FirstPage.Row> fitting(List<FirstPage.Row> rows, Paper paper) {
    int lines = 0;
    int number = 0;
    for (var row : rows) {
      lines += lines(row);
      if (number == MOST || number > 0 && lines > LINES.get(paper)) {
        break;
      }
      number++;
    }
    return rows.subList(0, number);
  }

  private static int lines(FirstPage.Row row) {
    int seen = lines(row.seen().length() + 1 + row.sure().length(), SEEN_A_LINE);
    return Math.max(Math.max(seen, row.worth().size()), lines(row.next().length(), NEXT_A_LINE));
  }

  private static int lines(int letters, int aLine) {
    return (letters + aLine - 1) / aLine;
  }

  /** That nothing was found, or that there are too few bodies to find anything. */
  private String none() {
    return report().charts().stream().anyMatch(LossChart::hasLimits)
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
    var table = new TableBuilder<FiveRow>("five figures even short").first("", FiveRow::label);
    add(table, formats().month(month().month()), month());
    add(table, formats().month(records().yearAgo().month()), records().yearAgo());
    add(table, say("before"), records().baseline());
    var rows = new ArrayList<FiveRow>();
    rows.add(new FiveRow(say("first.killed"), months -> new Counted(killed(months), "")));
    mainSpecies()
        .ifPresent(
            species -> {
              rows.add(row("first.chill", species, BodyFigure.CHILL));
              rows.add(row("first.ageing", species, BodyFigure.AGEING));
              rows.add(row("first.bench", species, BodyFigure.BENCH));
              rows.add(row("first.home", species, BodyFigure.TAKE_HOME));
            });
    return table.rows(table.known(rows.stream())).table();
  }

  private static void add(TableBuilder<FiveRow> table, String head, MonthBodies months) {
    table.counted(head, row -> row.figure().apply(months));
  }

  /** Bodies killed: of several months on average, from the first month with one. */
  private String killed(MonthBodies months) {
    int killed = months.killed().size();
    if (killed == 0 || months.first().equals(months.month())) {
      return count(killed);
    }
    long number = months.months().stream().dropWhile(m -> m.killed().isEmpty()).count();
    return say("first.a_month", number(BigFraction.of(killed, number), 0));
  }

  /** The species with the most bodies; of several the first. */
  private Optional<Species> mainSpecies() {
    var bodies = month().bodies();
    return Stream.of(Species.values())
        .filter(species -> !MonthBody.of(species, bodies).isEmpty())
        .min(Comparator.comparingInt(species -> -MonthBody.of(species, bodies).size()));
  }

  private FiveRow row(String key, Species species, BodyFigure figure) {
    return new FiveRow(
        say(key, species(species)),
        months -> {
          var ratio = figure.of(months, species);
          return ratio
              .percent()
              .map(p -> new Counted(formats().percent(p), ofBodies(ratio.bodies())))
              .orElse(Counted.NONE);
        });
  }
}
