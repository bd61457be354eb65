package gambrel.insight.month;

import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthRecords;
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
  /** Copies the list. */
  public MonthFigures {
    all = List.copyOf(all);
  }

  static MonthFigures of(MonthRecords records, MonthParts parts) {
    return new MonthFigures(new MonthFigureBuilder(records).build(parts));
  }

  /** All figures with a name. */
  public Stream<MonthFigure> of(FigureName name) {
    return all.stream().filter(figure -> figure.name() == name);
  }

  /** The figure of all owners' bodies of a species and group; empty if unknown. */
  public Optional<MonthFigure> find(FigureName name, Species species, FigureGroup group) {
    return find(name, Optional.empty(), species, group);
  }

  /** The figure of an owner's bodies of a species and group; empty if unknown. */
  public Optional<MonthFigure> find(
      FigureName name, Ownership whose, Species species, FigureGroup group) {
    return find(name, Optional.of(whose), species, group);
  }

  private Optional<MonthFigure> find(
      FigureName name, Optional<Ownership> whose, Species species, FigureGroup group) {
    var of = Optional.of(species);
    return of(name)
        .filter(f -> f.whose().equals(whose) && f.species().equals(of) && f.group().equals(group))
        .findFirst();
  }
}
