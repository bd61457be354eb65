package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.BodyGroup.Split;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.pages.views.PartView;
import java.util.List;
import java.util.Optional;

/** Losses of like bodies beside those of the twelve months before. */
record AgainstPart(MonthPart.Page page) implements MonthPart {
  /** A class with fewer bodies has no row of its own. */
  private static final int ENOUGH = 5;

  PartView part() {
    String percent = say("percent");
    var table =
        new TableBuilder<MonthFigure>("against figures even")
            .first("", this::bodies, "titled")
            .number(label("lost", unit()), this::lost)
            .number(
                label("worth", currency()),
                figure -> major(report().value(FigureName.valueOf(loss(figure)), figure)))
            .counted(label("lost", percent), figure -> counted(Optional.of(figure)))
            .counted(
                label("before", percent),
                figure -> counted(figure.before().value(), figure.before().bodies()))
            .number(label("middle", percent), figure -> middle(figure.before().spread()));
    for (var whose : Ownership.values()) {
      for (var loss : BodyFigure.LOSSES) {
        var figures =
            report()
                .figures(FigureName.percentOf(loss))
                .filter(figure -> figure.whose().filter(whose::equals).isPresent())
                .toList();
        table.group(
            say("shrink.group", owner(whose), say("shrink.loss." + loss.id())),
            figures.stream().filter(figure -> isShown(figure, figures)).toList());
      }
    }
    return PartView.of(say("against"), table.table(say("against_explained")), List.of());
  }

  private static BodyFigure loss(MonthFigure figure) {
    return BodyFigure.LOSSES.stream()
        .filter(loss -> FigureName.percentOf(loss) == figure.name())
        .findFirst()
        .orElseThrow();
  }

  private String lost(MonthFigure figure) {
    return weights().lost(loss(figure), report().find(FigureName.weightOf(loss(figure)), figure));
  }

  /** A class of a species needs enough bodies, and another class beside it that has enough. */
  private static boolean isShown(MonthFigure figure, List<MonthFigure> all) {
    var split = group(figure).split();
    return split == Split.ALL
        || split == Split.CATEGORY
            && isEnough(figure)
            && all.stream()
                    .filter(f -> f.species().equals(figure.species()) && group(f).split() == split)
                    .filter(AgainstPart::isEnough)
                    .count()
                > 1;
  }

  private static BodyGroup group(MonthFigure figure) {
    return (BodyGroup) figure.group();
  }

  private static boolean isEnough(MonthFigure figure) {
    return figure.bodies() >= ENOUGH && figure.before().bodies() >= ENOUGH;
  }

  private String bodies(MonthFigure figure) {
    String species = species(figure.species().orElseThrow());
    var group = group(figure);
    return group.split() == Split.ALL
        ? species
        : say("shrink.band", species, wording().category(group.name()));
  }
}
