package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the scales' resolution and permitted errors leave open; both as squares, to stay exact. */
final class Resolution {
  private Resolution() {}

  /** (2·√Σ(d²/12))² = Σ d²/3. */
  static BigFraction square(List<Row> rows, String unit) {
    var sum = BigFraction.ZERO;
    for (var row : rows) {
      var division = row.scale.divisionIn(unit);
      sum = sum.add(division.multiply(division).divide(3));
    }
    return sum;
  }

  /**
   * Per scale |Σ permitted error in − Σ permitted error out|, squared and added; null where a scale
   * lacks a class.
   */
  static BigFraction scales(List<Row> in, List<Row> out, String unit) {
    var all = new ArrayList<>(in);
    all.addAll(out);
    if (all.stream().anyMatch(row -> !row.scale.hasClass())) {
      return null;
    }
    Map<String, BigFraction> byScale = new TreeMap<>();
    in.forEach(r -> byScale.merge(r.scale.id(), error(r, unit), BigFraction::add));
    out.forEach(r -> byScale.merge(r.scale.id(), error(r, unit).negate(), BigFraction::add));
    return byScale.values().stream()
        .map(v -> v.multiply(v))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private static BigFraction error(Row row, String unit) {
    var load =
        row.exactNet.multiply(Num.factor(unit, row.scale.unit())).divide(row.scale.division());
    return row.scale.divisionIn(unit).multiply(row.scale.oiml(load));
  }
}
