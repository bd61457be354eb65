package gambrel.pages.owner.month;

import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Spread;
import gambrel.pages.views.PartView;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** How fast pieces were boned, read from the times of weighings on the block. */
record PacePart(MonthPart.Page page) implements MonthPart {

  PartView part() {
    String anHour = unit() + ' ' + say("an_hour");
    var lines = report().figures(FigureName.MINUTES_A_PIECE).toList();
    var table =
        new TableBuilder<MonthFigure>("pace figures even short")
            .first(
                say("piece"),
                line -> cut(line.species().orElseThrow(), group(line).item()),
                "wider")
            .words(say("boner"), line -> group(line).boner().orElseGet(() -> say("month.pace.all")))
            .number(say("pieces"), line -> count(line.bodies()))
            .number(say("minutes_each"), line -> tenths(line.value()))
            .number(say("middle"), line -> middle(line.spread()))
            .number(anHour, line -> anHour(line, MonthFigure::value))
            .number(
                label("before", say("minutes_each")),
                line -> tenths(line.before().spread().map(Spread::median)))
            .number(label("before", anHour), line -> anHour(line, f -> f.before().value()))
            .rows(lines);
    return PartView.of(say("pace"), table.table(), remarks(lines));
  }

  private static MonthFigure.Part group(MonthFigure line) {
    return (MonthFigure.Part) line.group();
  }

  private String anHour(MonthFigure line, Function<MonthFigure, Optional<BigFraction>> which) {
    var anHour = report().find(FigureName.BONED_AN_HOUR, line).flatMap(which);
    return anHour.map(weight -> number(weight, 0)).orElse("");
  }

  private List<String> remarks(List<MonthFigure> lines) {
    if (lines.isEmpty()) {
      return month().cut().isEmpty() ? List.of() : List.of(say("month.pace.none"));
    }
    var remarks = new ArrayList<>(List.of(say("month.pace.read")));
    int breaks = report().pace().month().breaks();
    if (breaks > 0) {
      remarks.add(wording().counted("month.pace.breaks", breaks));
    }
    if (lines.stream().anyMatch(PacePart::isHindquarter)) {
      remarks.add(say("month.pace.usual"));
    }
    return remarks;
  }

  private static boolean isHindquarter(MonthFigure line) {
    return line.species().filter(Species.BEEF::equals).isPresent()
        && group(line).item().id().equals(CutTree.HINDQUARTER);
  }
}
