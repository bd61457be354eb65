package gambrel.insight.month;

import gambrel.insight.month.change.ChangeFindings;
import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyValue;
import gambrel.insight.month.figures.Completeness;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.RoomKilos;
import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.month.loss.Hanging;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.month.loss.LossFigures;
import gambrel.insight.month.money.Bid;
import gambrel.insight.month.money.Debt;
import gambrel.insight.month.money.Earned;
import gambrel.insight.month.money.Income;
import gambrel.insight.month.money.MonthAccounts;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.value.BelowTrim;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.MarginalValue;
import gambrel.insight.month.yields.BonerComparison;
import gambrel.insight.month.yields.SupplierComparison;
import gambrel.insight.month.yields.Yields;
import gambrel.trade.cuts.Species;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The report of a month, from which its summary and its rows of the data files are made. Each part
 * is computed once.
 *
 * @param records the records that it is drawn from
 * @param charts charts of chill shrink by species, then of bench loss by species
 * @param hanging ageing shrink on days hung, by species
 * @param furtherDays what one more day on the rail takes and brings
 * @param pace how fast pieces were boned
 * @param stock the shop's own bodies of the month
 * @param suppliers the shop's own bodies of the month and the twelve before, by supplier
 * @param findings what the owner should look at, most money first
 * @param figures the figures, in the order of {@code month-figures.csv}; the pages' tables select
 *     from them
 */
public record MonthReport(
    MonthRecords records,
    List<LossChart> charts,
    List<Hanging> hanging,
    List<FurtherDay> furtherDays,
    Pace pace,
    List<OwnStock> stock,
    List<SupplierLine> suppliers,
    List<Finding> findings,
    List<MonthFigure> figures) {

  /** The report of a month. */
  public static MonthReport of(MonthRecords records) {
    var charts =
        Stream.of(BodyFigure.CHILL, BodyFigure.BENCH)
            .flatMap(loss -> LossChart.of(records, loss).stream())
            .toList();
    var hanging = Hanging.of(records);
    var furtherDays = FurtherDay.of(records);
    var completeness = Completeness.of(records);
    var boners = BonerComparison.of(records);
    var pace = Pace.of(records);
    var choices = CutChoice.of(records.settledOfAll(), records.values());
    boolean review = CutChoice.isDue(records);
    var stock = stock(records, records.bodies().settled());
    var suppliers = SupplierLine.of(stock(records, records.settledOfAll()));
    var income = Income.of(records);
    var bonersFound = boners.stream().flatMap(b -> b.findings(records).stream()).toList();
    var ofBoners =
        bonersFound.stream().flatMap(f -> f.accused().stream()).collect(Collectors.toSet());
    var left = hanging.stream().flatMap(Hanging::left).collect(Collectors.toSet());
    var belowTrim = BelowTrim.findings(records, review);
    var changes = ChangeFindings.of(records, ofBoners, left);
    var findings =
        Stream.of(
            changes.stream(),
            completeness.stream().flatMap(Completeness::finding),
            hanging.stream()
                .flatMap(of -> of.finding(records).stream())
                .filter(finding -> !isToldBy(changes, finding)),
            bonersFound.stream(),
            SupplierComparison.findings(records).stream(),
            pace.findings(records).stream(),
            choices.stream()
                .filter(of -> review)
                .flatMap(choice -> choice.findings(records))
                .filter(finding -> belowTrim.stream().noneMatch(cut -> isOf(finding, cut))),
            belowTrim.stream(),
            Debt.finding(records).stream(),
            Income.findings(records).stream(),
            OwnStock.finding(stock).stream(),
            suppliers.stream().flatMap(line -> line.finding(stock)));
    var figures =
        Stream.<Stream<MonthFigure>>of(
            RoomKilos.of(records).stream(),
            LossFigures.of(records).stream(),
            furtherDays.stream().flatMap(day -> day.figures().stream()),
            completeness.stream().map(Completeness::figure),
            Yields.of(records).stream(),
            boners.stream().flatMap(comparison -> comparison.figures().stream()),
            pace.figures(records).stream(),
            BodyValue.figures(records).stream(),
            choices.stream().flatMap(choice -> choice.figures().stream()),
            income.stream().map(Income::figure),
            Earned.of(records, pace.weightAnHour()).stream(),
            Bid.figures(records).stream(),
            MarginalValue.figures(
                MarginalValue.of(records.bodies().settled(), records.values()),
                records.settings().unit())
                .stream(),
            MonthAccounts.of(records).stream(),
            suppliers.stream().map(SupplierLine::figure));
    return new MonthReport(
        records,
        charts,
        hanging,
        furtherDays,
        pace,
        stock,
        suppliers,
        once(findings.flatMap(of -> of)),
        figures.flatMap(of -> of).toList());
  }

  /** Whether a way to cut is poor because of a cut that is worth less than trim. */
  private static boolean isOf(Finding choice, Finding cut) {
    return choice.evidence().get("way") instanceof Evidence.Cuts way
        && way.items().stream().anyMatch(item -> cut.accused().contains(item.id()));
  }

  /** Whether a change of the same kind is about the same bodies, and more. */
  private static boolean isToldBy(List<Finding> changes, Finding finding) {
    return changes.stream()
        .filter(change -> change.kind() == finding.kind())
        .anyMatch(change -> change.subjects().containsAll(finding.subjects()));
  }

  /** Findings in order; of several that accuse the same of the same, the first. */
  private static List<Finding> once(Stream<Finding> findings) {
    var accused = new HashSet<Map.Entry<Finding.Kind, List<String>>>();
    return findings
        .sorted(Finding.ORDER)
        .filter(f -> !f.accusesOne() || accused.add(Map.entry(f.kind(), f.accused())))
        .toList();
  }

  private static List<OwnStock> stock(MonthRecords records, Collection<MonthBody> bodies) {
    return OwnStock.of(bodies, records.values(), records.settings().currency());
  }

  /** All figures with a name. */
  public Stream<MonthFigure> figures(FigureName name) {
    return figures.stream().filter(figure -> figure.name() == name);
  }

  /** Another figure of the same bodies; empty if unknown. */
  public Optional<MonthFigure> find(FigureName name, MonthFigure same) {
    return find(name, same.whose(), same.species(), same.group());
  }

  /** The value of another figure of the same bodies; empty if unknown. */
  public Optional<BigFraction> value(FigureName name, MonthFigure same) {
    return find(name, same).flatMap(MonthFigure::value);
  }

  /**
   * The figure of a group of bodies; empty if unknown.
   *
   * @param whose which owner's bodies; empty for all
   * @param species which species; empty for all
   */
  public Optional<MonthFigure> find(
      FigureName name,
      Optional<Ownership> whose,
      Optional<Species> species,
      MonthFigure.Group group) {
    return figures(name)
        .filter(f -> f.whose().equals(whose) && f.species().equals(species))
        .filter(f -> f.group().equals(group))
        .findFirst();
  }
}
