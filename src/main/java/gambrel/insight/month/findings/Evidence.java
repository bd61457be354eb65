package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.Ownership;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value of a finding, typed so that the page prints it in its reader's way. */
public sealed interface Evidence {
  /** A percentage, printed with so many decimals. */
  record Percent(BigFraction value, int decimals) implements Evidence {}

  /** A weight of the shop's unit, printed as rail weights are. */
  record Mass(gambrel.trade.measure.Weight value) implements Evidence {}

  /**
   * A weight for each owner who bears it, in the shop's unit, printed as rail weights are. Owners
   * without a body are missing.
   */
  record Borne(Map<Ownership, gambrel.trade.measure.Weight> weights) implements Evidence {
    /** Copies the weights, in the order of owners. */
    public Borne {
      weights = Collections.unmodifiableMap(new TreeMap<>(weights));
    }
  }

  /** Money. */
  record Cash(gambrel.trade.measure.Money value) implements Evidence {}

  /** Money in the major unit for one unit of weight, of time or a day; printed with cents. */
  record Rate(BigFraction value) implements Evidence {}

  /** A number of things. */
  record Count(long value) implements Evidence {}

  /** A number with its decimals: minutes, hours, days. */
  record Number(BigFraction value, int decimals) implements Evidence {}

  /** A day. */
  record Day(LocalDate value) implements Evidence {}

  /** A month. */
  record Month(YearMonth value) implements Evidence {}

  /** A species. */
  record Kind(Species value) implements Evidence {}

  /** Items of a species, printed by name. */
  record Cuts(Species species, List<Item> items) implements Evidence {
    /** Copies the items. */
    public Cuts {
      items = List.copyOf(items);
    }
  }

  /** Something that the shop itself named: a scale, a boner, a supplier. */
  record Name(String value) implements Evidence {}

  /** Ids of bodies; a page may print the first few of them. */
  record Bodies(List<String> ids) implements Evidence {
    /** Copies the ids. */
    public Bodies {
      ids = List.copyOf(ids);
    }
  }

  /** What a loss was worth, and to whom. */
  record Cost(Ownership whose, gambrel.trade.measure.Money value) {}

  /** A percentage with one decimal. */
  static Percent percent(BigFraction value) {
    return new Percent(value, 1);
  }

  /** A number of things. */
  static Count count(long value) {
    return new Count(value);
  }

  /** A percentage as a share of two numbers, one decimal. */
  static Percent percent(BigFraction part, BigFraction whole) {
    return percent(Exact.percent(part, whole));
  }
}
