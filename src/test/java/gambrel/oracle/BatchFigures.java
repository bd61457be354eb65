package gambrel.oracle;

import java.math.BigInteger;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** One batch: what went in, what came out, and whose it is. */
final class BatchFigures {
  final String id;
  final BigFraction meat;
  final BigFraction added;
  final BigFraction out;
  final BigFraction loss;
  final BigFraction lossPercent;
  final boolean open;
  final boolean late;
  final boolean hasDue;

  /** When it should be packed, or null. */
  final LocalDate due;

  final String state;

  /** Each owner's part of the output, in thousandths; a tub without a body is the shop's. */
  final Map<String, BigInteger> parts = new TreeMap<>();

  /** Each owner's part of what the output weighs more than its meat, in thousandths. */
  final Map<String, BigInteger> addedParts = new TreeMap<>();

  /** Its tubs, what was added, and its packs. */
  final List<Row> rows;

  BatchFigures(String id, List<Row> rows, Setup setup, Instant asOf) {
    this.id = id;
    this.rows = rows;
    var listed = setup.rows("batches").stream().filter(l -> l.get("batch").equals(id)).findFirst();
    boolean gain = listed.filter(l -> l.get("gain").equals("yes")).isPresent();
    meat = sum(rows, "tub");
    out = sum(rows, "pack");
    var put = sum(rows, "added");
    boolean gained = gain && out.compareTo(meat.add(put)) > 0;
    added = gained ? out.subtract(meat) : put;

    var last = rows.stream().map(r -> r.time).max(Comparator.naturalOrder()).orElseThrow();
    boolean packed = rows.stream().anyMatch(r -> r.is("pack"));
    open = !packed || last.plus(setup.quiet()).isAfter(asOf);
    due =
        listed
            .filter(l -> setup.columns.isLegible("batches", l, "due"))
            .map(l -> setup.date(l.get("due")))
            .orElse(null);
    hasDue = due != null;
    late =
        open
            && (hasDue
                ? setup.localDate(asOf).isAfter(due)
                : asOf.isAfter(last.plus(Duration.ofDays(14))));

    var in = meat.add(added);
    loss = open ? null : in.subtract(out);
    lossPercent = open ? null : Num.percent(loss, in);
    state = open ? "open" : isOut(rows, setup) ? "out" : "balanced";
    if (!open && meat.signum() > 0) {
      share(rows);
    }
  }

  private static BigFraction sum(List<Row> rows, String step) {
    return rows.stream()
        .filter(r -> r.is(step))
        .map(r -> r.net)
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private boolean isOut(List<Row> rows, Setup setup) {
    var limit = setup.number("limit.batch_loss_pct", "8.0");
    return meat.signum() == 0
        || Num.exceedsRoot(loss.negate(), Resolution.square(rows, setup.unit))
        || lossPercent.compareTo(limit) > 0;
  }

  private void share(List<Row> rows) {
    var part = out.multiply(meat).divide(meat.add(added));
    part = part.compareTo(meat) > 0 ? meat : part;
    var owners = new TreeMap<String, BigFraction>();
    for (var row : rows) {
      if (row.is("tub")) {
        owners.merge(row.body == null ? "shop" : row.body.id(), row.net, BigFraction::add);
      }
    }
    parts.putAll(Split.of(Num.steps(part, 3), owners));
    var meatOut = parts.values().stream().reduce(BigInteger.ZERO, BigInteger::add);
    var more = Num.steps(out, 3).subtract(meatOut).max(BigInteger.ZERO);
    addedParts.putAll(Split.of(more, owners));
  }

  /** A body's part of what the output weighs more than its meat; nothing while it is open. */
  BigFraction addedPart(String body) {
    return Num.ofSteps(addedParts.getOrDefault(body, BigInteger.ZERO), 3);
  }

  /** A body's part of the output; nothing while the batch is open. */
  BigFraction part(String body) {
    return Num.ofSteps(parts.getOrDefault(body, BigInteger.ZERO), 3);
  }
}
