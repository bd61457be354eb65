package gambrel.insight.month.findings;

import gambrel.insight.month.bodies.Ownership;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** A value of a finding. Its type tells the page how to print it. */
public sealed interface Evidence {
  /** A percentage, printed with so many decimals. */
  record Percent(BigFraction value, int decimals) implements Evidence {}

  /** A weight, printed like rail weights. */
  record Mass(gambrel.trade.measure.Weight value) implements Evidence {}

  /** A weight for each owner, printed like rail weights. Owners without a body are missing. */
  record Borne(Map<Ownership, gambrel.trade.measure.Weight> weights) implements Evidence {
    /** Copies the weights, in the order of owners. */
    public Borne {
      weights = Collections.unmodifiableMap(new TreeMap<>(weights));
    }
  }

  /** Money. */
  record Cash(gambrel.trade.measure.Money value) implements Evidence {}

  /** Money in the major unit for a unit of weight or time; printed with cents. */
  record Rate(BigFraction value) implements Evidence {}

  /** How many things. */
  record Count(long value) implements Evidence {}

  /** A number of minutes, hours or days, printed with so many decimals. */
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

  /** A name that the shop gave, of a scale, a boner or a supplier. */
  record Name(String value) implements Evidence {}

  /** Ids of bodies; a page may print the first ones only. */
  record Bodies(List<String> ids) implements Evidence {
    /** Copies the ids. */
    public Bodies {
      ids = List.copyOf(ids);
    }
  }

  /** What a loss was worth, and to which owner. */
  record Cost(Ownership whose, gambrel.trade.measure.Money value) {}

  /** A percentage with one decimal. */
  static Percent percent(BigFraction value) {
    return new Percent(value, 1);
  }

  /** How many things. */
  static Count count(long value) {
    return new Count(value);
  }
}
