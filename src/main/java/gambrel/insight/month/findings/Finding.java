package gambrel.insight.month.findings;

import gambrel.trade.measure.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    FindingKind kind,
    String variant,
    List<String> subjects,
    Map<String, Evidence> evidence,
    List<Evidence.Cost> costs,
    Sureness sureness) {
  /** Most money first; findings without money last; then by sureness, kind and subjects. */
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

  /** The largest cost to one owner; findings are ordered by it. Empty if unknown. */
  public Optional<Money> money() {
    return costs.stream().map(Evidence.Cost::value).max(Comparator.naturalOrder());
  }

  /** The key of its words: {@code scale.rail} after a prefix such as {@code finding.}. */
  public String key(String prefix) {
    String key = prefix + kind.id();
    return variant.isEmpty() ? key : key + "." + variant;
  }
}
