package gambrel.insight.month.figures;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value of a finding. Its type tells the page how to print it. */
public sealed interface Evidence {
  /** A percentage, printed with so many decimals. */
  record Percent(BigFraction value, int decimals) implements Evidence {}

  /** A weight, printed like rail weights. */
  record Mass(Weight value) implements Evidence {}

  /**
   * A weight for each owner in the shop's unit, printed like rail weights; owners without a body
   * are missing.
   */
  record Borne(Map<Ownership, BigFraction> weights) implements Evidence {}

  /** Money. */
  record Cash(Money value) implements Evidence {}

  /** Money in the major unit for a unit of weight or time; printed with cents. */
  record Rate(BigFraction value) implements Evidence {}

  /** How many things. */
  record Count(long value) implements Evidence {}

  /** A number of minutes, hours or days, printed with so many decimals. */
  record Number(BigFraction value, int decimals) implements Evidence {}

  /** A day. */
  record Day(LocalDate value) implements Evidence {}

  /** A species. */
  record Kind(Species value) implements Evidence {}

  /** Several species. */
  record Kinds(List<Species> values) implements Evidence {}

  /** Items of a species, printed by name. */
  record Cuts(Species species, List<Item> items) implements Evidence {}

  /** A name that the shop gave, of a scale, a boner or a supplier. */
  record Name(String value) implements Evidence {}

  /** Names or ids of several such things. */
  record Names(List<String> values) implements Evidence {}

  /** Ids of bodies; a page may print the first ones only. */
  record Bodies(List<String> ids) implements Evidence {}

  /** The species of some bodies. */
  static Evidence species(Collection<MonthBody> bodies) {
    var all = bodies.stream().map(MonthBody::species).distinct().sorted().toList();
    return all.size() == 1 ? new Kind(all.get(0)) : new Kinds(all);
  }

  /** A statistic of minutes, hours, days or none. */
  static Number number(double statistic, int decimals) {
    return new Number(Exact.ofStatistic(statistic), decimals);
  }

  /** A statistic in per cent, with two decimals. */
  static Percent percent(double statistic) {
    return new Percent(Exact.ofStatistic(statistic), 2);
  }

  /** A percentage with one decimal. */
  static Percent percent(BigFraction value) {
    return new Percent(value, 1);
  }
}
