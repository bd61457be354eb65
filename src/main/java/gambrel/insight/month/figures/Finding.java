package gambrel.insight.month.figures;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Something in the month that its owner should look at.
 *
 * @param kind what it is; it decides what to do next
 * @param variant which sentence of the kind is printed, such as {@code above}; empty if the kind
 *     has only one
 * @param subjects ids of the bodies, scales, batches or statements that it is about
 * @param evidence the values that decided it, by the names that its sentence uses
 * @param costs what it costs each owner in this month, at the shop's values; empty if unknown
 * @param sureness how sure it is
 */
public record Finding(
    Kind kind,
    String variant,
    List<String> subjects,
    Map<String, Evidence> evidence,
    List<Cost> costs,
    Sureness sureness) {
  /** How sure a finding is. */
  public enum Sureness implements FileWord {
    /** It is a sum of records; nothing was inferred. */
    CERTAIN,
    /** A statistical test with a stated rate of false alarms found it. */
    LIKELY;
  }

  /** Most money first; findings without money last; then by sureness, kind and subjects. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.money().map(m -> -Math.abs(m.minor())).orElse(0L))
          .thenComparing(Finding::sureness)
          .thenComparing(Finding::kind)
          .thenComparing(Finding::variant)
          .thenComparing(f -> String.join(" ", f.subjects()));

  /** A finding that is a sum of records. */
  public static Finding certain(
      Kind kind,
      String variant,
      List<String> subjects,
      Map<String, Evidence> evidence,
      List<Cost> costs) {
    return new Finding(kind, variant, subjects, evidence, costs, Sureness.CERTAIN);
  }

  /** A finding of a statistical test; the month's rate of false alarms is put to its evidence. */
  public static Finding likely(
      Kind kind,
      String variant,
      List<String> subjects,
      Map<String, Evidence> evidence,
      List<Cost> costs) {
    var values = new HashMap<>(evidence);
    values.put("false_alarms", Evidence.percent(Exact.ofStatistic(100 * AlarmRates.MONTH)));
    return new Finding(kind, variant, subjects, values, costs, Sureness.LIKELY);
  }

  /** The largest cost to one owner; findings are ordered by it. Empty if unknown. */
  public Optional<Money> money() {
    return costs.stream().map(Cost::value).max(Comparator.naturalOrder());
  }

  /** The owner who bears that cost; empty if unknown. */
  public Optional<Ownership> whose() {
    return costs.stream().max(Comparator.comparing(Cost::value)).map(Cost::whose);
  }

  /** The species that it is about; empty if it is about all. */
  public Optional<Species> species() {
    return evidence("species", Evidence.Kind.class)
        .map(Evidence.Kind::value)
        .or(() -> evidence("piece", Evidence.Cuts.class).map(Evidence.Cuts::species));
  }

  /** The day from which on it is so; empty if there is none. */
  public Optional<LocalDate> since() {
    return evidence("since", Evidence.Day.class).map(Evidence.Day::value);
  }

  /**
   * Ids or names of what it accuses: bodies, scales, a chiller, a boner, a supplier, an item, a
   * batch, customers. Empty if it accuses nothing in particular.
   */
  public List<String> accused() {
    return switch (kind) {
      case SCALE -> names("scales");
      case CHILLER -> chiller();
      case BONER -> names("boner");
      case SUPPLIER -> names("supplier");
      case CLASS -> names("class");
      case UNPAID -> names("customers");
      case CUT_CHOICE, BELOW_TRIM -> pieces();
      case STOCK, CHILLED_BODIES, BENCH_BODIES, HANGING, BATCH, PAPERWORK, PACE -> subjects;
      case BENCH, CHARGES, YIELD -> List.of();
    };
  }

  /** Whether it accuses one boner, supplier or class, of which another test may tell the same. */
  public boolean accusesOne() {
    return kind == Kind.BONER || kind == Kind.SUPPLIER || kind == Kind.CLASS;
  }

  private <E extends Evidence> Optional<E> evidence(String name, Class<E> type) {
    return Optional.ofNullable(evidence.get(name)).filter(type::isInstance).map(type::cast);
  }

  private List<String> names(String name) {
    return evidence(name, Evidence.Names.class)
        .map(Evidence.Names::values)
        .or(() -> evidence(name, Evidence.Name.class).map(one -> List.of(one.value())))
        .orElse(List.of());
  }

  /** The chiller, if all its bodies hung in one. */
  private List<String> chiller() {
    var chillers = names("chillers");
    return chillers.size() == 1 && !chillers.contains("") ? chillers : List.of();
  }

  private List<String> pieces() {
    return evidence("piece", Evidence.Cuts.class).stream()
        .flatMap(cuts -> cuts.items().stream().map(Item::id))
        .toList();
  }

  /** The key of its words: {@code scale.rail} after a prefix such as {@code finding.}. */
  public String key(String prefix) {
    String key = prefix + kind.id();
    return variant.isEmpty() ? key : key + "." + variant;
  }

  /** What a loss was worth, and to which owner; costs of different owners are never added. */
  public record Cost(Ownership whose, Money value) {
    /**
     * The cost to each owner whose weight is not zero.
     *
     * @param rate money in the major unit for a unit of weight; if it is empty, there are no costs
     */
    public static List<Cost> of(
        Map<Ownership, BigFraction> weights, Optional<BigFraction> rate, Currency currency) {
      return weights.entrySet().stream()
          .filter(weight -> rate.isPresent() && weight.getValue().signum() != 0)
          .map(w -> new Cost(w.getKey(), Money.of(w.getValue().multiply(rate.get()), currency)))
          .toList();
    }

    /** The cost of weights lost on the rail; none where values are missing. */
    public static List<Cost> onRail(
        Map<Ownership, BigFraction> weights, Species species, MonthRecords records) {
      return of(weights, records.values().onRail(species), records.settings().currency());
    }

    /** Costs of which those of one owner are added. */
    public static List<Cost> merged(List<Cost> costs) {
      var sums = new EnumMap<Ownership, Money>(Ownership.class);
      costs.forEach(cost -> sums.merge(cost.whose(), cost.value(), Money::plus));
      return sums.entrySet().stream().map(e -> new Cost(e.getKey(), e.getValue())).toList();
    }

    /** A cost to the shop alone. */
    public static List<Cost> ofShop(Money money) {
      return List.of(new Cost(Ownership.OWN, money));
    }
  }

  /**
   * What a month may ask its owner to look at. Words files have what was seen under {@code
   * finding.ID}, and what to do under {@code step.ID}.
   */
  public enum Kind implements FileWord {
    /** Bodies lost more in the chiller than before. */
    CHILLER,
    /** Single bodies lost far more or far less in the chiller, or were weighed cold late. */
    CHILLED_BODIES,
    /** The bench lost more than before. */
    BENCH,
    /** Single bodies lost far more or far less on the bench. */
    BENCH_BODIES,
    /** A change of losses that a scale explains. */
    SCALE,
    /** Bodies hung longer than usual. */
    HANGING,
    /** Batches lost more than the shop's limit, or more than before. */
    BATCH,
    /** Bodies without a weight that figures need. */
    PAPERWORK,
    /** Statements that have not been paid for long. */
    UNPAID,
    /** Customers were charged less for a unit of weight than before. */
    CHARGES,
    /** More meat stayed on the bone with one boner than with the others. */
    BONER,
    /** A way to cut a piece brought less for a unit of weight than another way. */
    CUT_CHOICE,
    /** A cut was packed that is worth less than trim. */
    BELOW_TRIM,
    /** Own bodies brought less than they cost. */
    STOCK,
    /** Bodies of a supplier dressed worse or brought less than those of others. */
    SUPPLIER,
    /** Bodies of a class lost more, or gave less, than before. */
    CLASS,
    /** Less was taken home than before. */
    YIELD,
    /** Work on the block took longer than before. */
    PACE;
  }
}
