package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.MonthBodies;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.loss.LossChart;
import gambrel.pages.views.FirstPage;
import gambrel.pages.views.FirstPage.FiveCell;
import gambrel.pages.views.FirstPage.FiveRow;
import gambrel.pages.views.FlowView;
import gambrel.pages.views.TableView;
import gambrel.trade.cuts.Species;
import gambrel.trade.shop.Settings.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The page of decisions: findings, where all weight of the month went, five figures beside earlier
 * months, and the month in sum.
 */
record FirstPart(MonthPart.Page page) implements MonthPart {
  private static final int MOST = 5;

  /** Lines for findings, for bars of the picture, for rows of sums and for what is left out. */
  private static final Map<Paper, Integer> LINES = Map.of(Paper.A4, 33, Paper.LETTER, 28);

  private static final int SEEN_A_LINE = 54;
  private static final int NEXT_A_LINE = 36;
  private static final int SMALL_A_LINE = 120;
  private static final int MONTHS = 12;

  /** One of the five figures. */
  private record FiveFigure(
      String label,
      Function<MonthBodies, Optional<BigFraction>> value,
      Function<MonthBodies, FiveCell> cell) {}

  FirstPage view() {
    var all = rows();
    var rows = fitting();
    int more = all.size() - rows.size();
    return new FirstPage(
        counted(),
        rows,
        all.isEmpty() ? none() : "",
        more > 0 ? wording().counted("first.more", more) : "",
        leftOut(),
        kilos(),
        five(),
        sums());
  }

  /** The findings that stand on the page. */
  List<FirstPage.Row> fitting() {
    int taken =
        kilos().stream().mapToInt(picture -> picture.rows().size()).sum()
            + sums().stream().mapToInt(table -> table.rows().size()).sum()
            + lines(counted().length(), SMALL_A_LINE)
            + lines(String.join(" ", leftOut()).length(), SMALL_A_LINE);
    return fitting(rows(), LINES.get(records().settings().paper()) - taken);
  }

  private List<String> leftOut() {
    return new LeftOutPart(page).sentences();
  }

  private List<FlowView> kilos() {
    return new KilosPart(page).picture().stream().toList();
  }

  private List<TableView> sums() {
    return new KilosPart(page).sums();
  }

  /** The findings that have no room on the page. */
  List<FirstPage.Row> others() {
    var all = rows();
    return all.subList(fitting().size(), all.size());
  }

  private List<FirstPage.Row> rows() {
    var words = new FindingWords(wording(), weights());
    return report().findings().stream().map(words::row).toList();
  }

  /**
   * The first rows that have room, one at least, so that the rest of the page still fits: five at
   * most, fewer if they need more lines. Lines are estimated from the number of letters, by the
   * letters that fill a line in the longest language.
   *
   * @param room lines for the findings
   */
  static List<FirstPage.Row> fitting(List<FirstPage.Row> rows, int room) {
    int lines = 0;
    int number = 0;
    for (var row : rows) {
      lines += lines(row);
      if (number == MOST || number > 0 && lines > room) {
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
    return say(
        "first.counted",
        Stream.of(month(), records().baseline())
            .flatMap(months -> Stream.of(months.killed(), months.cut()))
            .map(bodies -> count(bodies.stream().filter(MonthBody::isCounted).count()))
            .toArray(String[]::new));
  }

  /** The five figures; none if none is known in the month. */
  private List<FirstPage.Five> five() {
    var now = month();
    var last = now.between(now.month().minusMonths(1), now.month().minusMonths(1));
    var shown = new ArrayList<>(List.of(now, last));
    if (!records().yearAgo().killed().isEmpty() || !records().yearAgo().cut().isEmpty()) {
      shown.add(records().yearAgo());
    }
    var heads = new ArrayList<>(shown.stream().map(m -> formats().month(m.month())).toList());
    heads.add(say("thirteen_months"));
    var thirteen = now.between(now.month().minusMonths(MONTHS), now.month()).months();
    var rows =
        figures()
            .filter(figure -> !figure.cell().apply(now).text().isEmpty())
            .map(
                figure ->
                    new FiveRow(
                        figure.label(),
                        shown.stream().map(figure.cell()).toList(),
                        Sparkline.of(thirteen.stream().map(figure.value()).toList())))
            .toList();
    return rows.isEmpty() ? List.of() : List.of(new FirstPage.Five(heads, rows));
  }

  private Stream<FiveFigure> figures() {
    return Stream.concat(
        Stream.of(
            new FiveFigure(
                say("first.killed"),
                months ->
                    Optional.of(months.killed().size()).filter(n -> n > 0).map(BigFraction::of),
                months -> new FiveCell(count(months.killed().size()), ""))),
        mainSpecies().stream()
            .flatMap(
                species ->
                    Stream.of(
                        figure("first.chill", species, BodyFigure.CHILL),
                        figure("first.ageing", species, BodyFigure.AGEING),
                        figure("first.bench", species, BodyFigure.BENCH),
                        figure("first.home", species, BodyFigure.TAKE_HOME))));
  }

  private FiveFigure figure(String key, Species species, BodyFigure figure) {
    return new FiveFigure(
        say(key, species(species)),
        months -> figure.of(months, species).percent(),
        months -> {
          var ratio = figure.of(months, species);
          return ratio
              .percent()
              .map(p -> new FiveCell(formats().percent(p), ofBodies(ratio.bodies())))
              .orElse(new FiveCell("", ""));
        });
  }
}
