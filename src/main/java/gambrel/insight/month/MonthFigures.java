package gambrel.insight.month;

import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The figures of a month, in the order of {@code month-figures.csv}. The pages' tables select from
 * them.
 *
 * @param all the figures
 */
public record MonthFigures(List<MonthFigure> all) {
  /** All figures with a name. */
  public Stream<MonthFigure> of(FigureName name) {
    return all.stream().filter(figure -> figure.name() == name);
  }

  /** Another figure of the same bodies; empty if unknown. */
  public Optional<MonthFigure> find(FigureName name, MonthFigure same) {
    return find(name, same.whose(), same.species(), same.group());
  }

  /**
   * The figure of a group of bodies; empty if unknown.
   *
   * @param whose which owner's bodies; empty for all
   * @param species which species; empty for all
   */
  public Optional<MonthFigure> find(
      FigureName name, Optional<Ownership> whose, Optional<Species> species, FigureGroup group) {
    return of(name)
        .filter(f -> f.whose().equals(whose) && f.species().equals(species))
        .filter(f -> f.group().equals(group))
        .findFirst();
  }
}
