package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Money;
import gambrel.trade.register.ChargeLine;
import gambrel.trade.shop.Charge;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the month's statements charge, without tax, as issued: by description, in the order of the
 * price list, then all together. For each the money, the money for a unit of the customers' weight
 * into the boning room of the bodies charged, and the money for an hour on the block: that weight
 * over the weight boned in an hour of the species. Bodies of which the weight or the pace is
 * unknown are left out of the rates.
 */
public final class Earned {
  private final MonthRecords records;
  private final Map<String, MonthBody> bodies = new HashMap<>();
  private final Map<Species, BigFraction> anHour;

  private Earned(MonthRecords records, Map<Species, BigFraction> anHour) {
    this.records = records;
    this.anHour = anHour;
    records.bodies().all().forEach(body -> bodies.put(body.id(), body));
  }

  /** A charge of a body. */
  private record Item(String body, Money amount) {}

  /**
   * The figures; none if nothing was issued.
   *
   * @param anHour weight boned in an hour, of the species of which it is known
   */
  public static List<MonthFigure> of(MonthRecords records, Map<Species, BigFraction> anHour) {
    var kinds = new LinkedHashMap<String, List<Item>>();
    records.night().shop().charges().stream()
        .map(Charge::description)
        .forEach(description -> kinds.putIfAbsent(description, new ArrayList<>()));
    var all = new ArrayList<Item>();
    for (var debt : Debt.of(records)) {
      for (ChargeLine line : debt.statement().lines()) {
        var item = new Item(debt.statement().body(), line.amount());
        kinds.computeIfAbsent(line.description(), d -> new ArrayList<>()).add(item);
        all.add(item);
      }
    }
    var earned = new Earned(records, anHour);
    var figures = new ArrayList<MonthFigure>();
    kinds.forEach((kind, items) -> earned.add(figures, new MonthFigure.Named(kind), items));
    earned.add(figures, BodyGroup.ALL, all);
    return figures;
  }

  private void add(List<MonthFigure> figures, MonthFigure.Group group, List<Item> items) {
    if (items.isEmpty()) {
      return;
    }
    var charged = new HashSet<String>();
    items.forEach(item -> charged.add(item.body()));
    var money = Money.sum(items.stream().map(Item::amount)).fraction(currency());
    figures.add(MonthFigure.ofAll(FigureName.CHARGED, group, charged.size(), money));
    rate(figures, FigureName.CHARGED_OF_BONING, group, items, charged, Income::customersWeight);
    rate(figures, FigureName.CHARGED_AN_HOUR, group, items, charged, this::hours);
  }

  private Currency currency() {
    return records.settings().currency();
  }

  /** Adds the money over a measure of the bodies charged, of those of which it is known. */
  private void rate(
      List<MonthFigure> figures,
      FigureName name,
      MonthFigure.Group group,
      List<Item> items,
      Set<String> charged,
      Function<MonthBody, Optional<BigFraction>> measure) {
    var measured = new HashMap<String, BigFraction>();
    for (String id : charged) {
      Optional.ofNullable(bodies.get(id))
          .flatMap(measure)
          .ifPresent(value -> measured.put(id, value));
    }
    var whole = measured.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    if (whole.signum() > 0) {
      var known = items.stream().filter(item -> measured.containsKey(item.body()));
      var money = Money.sum(known.map(Item::amount)).fraction(currency());
      figures.add(MonthFigure.ofAll(name, group, measured.size(), money.divide(whole)));
    }
  }

  /** Hours on the block for the customers' part of a body. */
  private Optional<BigFraction> hours(MonthBody body) {
    return Income.customersWeight(body)
        .flatMap(weight -> Optional.ofNullable(anHour.get(body.species())).map(weight::divide));
  }
}
