package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthFigure.By;
import gambrel.insight.month.figures.Spread;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Yields of bodies beside the twelve months before, and by primal. */
record YieldsPart(MonthPart.Page page) implements MonthPart {
  /** What like bodies gave; below each row median and middle half of the twelve months before. */
  PartView beforeAndNow() {
    var lines = report().figures(FigureName.of(BodyFigure.YIELDS.get(0))).toList();
    var table =
        new TableBuilder<MonthFigure>("like figures even short").first("", this::name, "kinds");
    var heads = List.of("take_home_of_cold", "bone_of_boning", "fat_of_boning", "trim_of_boning");
    for (int i = 0; i < heads.size(); i++) {
      var figure = BodyFigure.YIELDS.get(i);
      table.counted(say(heads.get(i)), line -> counted(same(figure, line)));
    }
    for (var line : lines) {
      table.row(by(line) == By.ALL ? "strong" : "", line);
      var before = BodyFigure.YIELDS.stream().map(figure -> before(same(figure, line))).toList();
      if (before.stream().anyMatch(text -> !text.isEmpty())) {
        var cells = new ArrayList<>(List.of(new Cell(say("before"), TableBuilder.FIRST)));
        before.forEach(text -> cells.add(new Cell(text, TableBuilder.NUMBER, 2)));
        table.add("under", cells);
      }
    }
    var tables = table.table(remarks(lines));
    return PartView.of(say("yields_before"), tables, List.of());
  }

  /** Another yield of the same bodies. */
  private Optional<MonthFigure> same(BodyFigure figure, MonthFigure line) {
    return report().find(FigureName.of(figure), line);
  }

  private static By by(MonthFigure line) {
    return ((MonthFigure.Like) line.group()).by();
  }

  private String name(MonthFigure line) {
    String name = ((MonthFigure.Like) line.group()).name();
    return switch (by(line)) {
      case ALL -> species(line);
      case CLASS -> say("month.split.class", wording().category(name));
      case BONER -> say("month.split.boner", name);
    };
  }

  /** Median and middle half of the bodies before; empty if there are few. */
  private String before(Optional<MonthFigure> figure) {
    var spread = figure.flatMap(f -> f.before().spread());
    String middle = middle(spread);
    return middle.isEmpty()
        ? ""
        : say("month.median.middle", tenths(spread.map(Spread::median)), middle);
  }

  /** What came of each primal. */
  PartView primals() {
    String percent = say("percent");
    var table =
        new TableBuilder<MonthFigure>("primals figures even")
            .first("", this::primal, "kinds")
            .counted(label("this_month", percent), line -> counted(Optional.of(line)))
            .counted(
                label("before", percent),
                line -> counted(line.before().spread().map(Spread::median), line.before().bodies()))
            .number(label("middle", percent), line -> middle(line.before().spread()));
    var lines = report().figures(FigureName.PRIMAL_PCT);
    Groups.inOrder(lines, this::species).forEach(table::group);
    return PartView.of(say("primals"), table.table(say("primals_explained")), List.of());
  }

  private String primal(MonthFigure line) {
    var item = ((MonthFigure.Part) line.group()).item();
    return wording().cut(line.species().orElseThrow(), item);
  }

  /** How to read the table, and whether the boners differ. */
  private List<String> remarks(List<MonthFigure> lines) {
    var remarks = new ArrayList<>(List.of(say("yields_before_explained")));
    if (lines.stream().anyMatch(line -> by(line) == By.BONER)) {
      boners().ifPresent(remarks::add);
    }
    return remarks;
  }

  /**
   * That no boner leaves more bone than others, or that it cannot be told; else a finding says so.
   */
  private Optional<String> boners() {
    var compared = report().figures(FigureName.BONE_TO_OTHERS_POINTS).toList();
    if (compared.isEmpty()) {
      return Optional.of(say("month.boners.few", count(GroupComparison.FEWEST)));
    }
    boolean alike =
        compared.stream().allMatch(f -> f.interval().orElseThrow().lower().signum() <= 0);
    return alike ? Optional.of(say("month.boners.alike")) : Optional.empty();
  }
}
