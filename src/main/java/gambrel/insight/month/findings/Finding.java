package gambrel.insight.month.findings;

import gambrel.trade.measure.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something in the month that asks for a look.
 *
 * @param kind what it is, and so what to do next
 * @param variant which of the kind's sentences says it, such as {@code above}; empty for the only
 *     one
 * @param subjects ids of the bodies, scales, batches or statements that it is about
 * @param evidence the values that decided it, by the names that its sentence uses
 * @param costs what it costs, or would bring, in this month at the shop's values, to each owner;
 *     empty if unknown
 * @param sureness how far to trust it
 */
public record Finding(
    FindingKind kind,
    String variant,
    List<String> subjects,
    Map<String, Evidence> evidence,
    List<Evidence.Cost> costs,
    Sureness sureness) {
  /** Most money first; those without money after, by sureness, kind and subjects. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.money().map(m -> -Math.abs(m.minor())).orElse(0L))
          .thenComparing(Finding::sureness)
          .thenComparing(Finding::kind)
          .thenComparing(Finding::variant)
          .thenComparing(f -> String.join(" ", f.subjects()));

  /** Copies the lists. */
  public Finding {
    subjects = List.copyOf(subjects);
    evidence = Map.copyOf(evidence);
    costs = List.copyOf(costs);
  }

  /** The most that one owner loses, by which findings are put in order; empty if unknown. */
  public Optional<Money> money() {
    return costs.stream().map(Evidence.Cost::value).max(Comparator.naturalOrder());
  }

  /** The key of its words under a prefix that ends in a dot: {@code finding.scale.rail}. */
  public String key(String prefix) {
    String key = prefix + kind.id();
    return variant.isEmpty() ? key : key + "." + variant;
  }
}
