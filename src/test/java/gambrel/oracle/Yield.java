package gambrel.oracle;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** What became of a body's boning weight; null is not known. */
final class Yield {
  /** Days without a weighing for which no loss on the rail is allowed. */
  static final int DAYS_UNWEIGHED = 2;

  final BodyFigures body;
  final List<BatchFigures> batches;

  BigFraction takeHome;
  BigFraction meatHome;
  BigFraction offal;
  BigFraction tub;
  BigFraction bone;
  BigFraction fat;
  BigFraction waste;
  BigFraction railTrim;
  BigFraction cuttingLoss;
  BigFraction unweighed;
  BigFraction batchLoss;

  /** Squares of what the figures' names say. */
  BigFraction balanceSquare;

  BigFraction scaleSquare;

  /** Whether a body that leaves as it hung, or is lost, is done with. */
  private final boolean settled;

  Yield(BodyFigures body, Map<String, BatchFigures> all, Instant asOf) {
    this.body = body;
    var progress = new Progress(body, asOf);
    settled = body.beast.uncut() && (!progress.tooEarly() || progress.closed());
    batches =
        body.rows.stream()
            .filter(r -> r.is("tub") && r.hasBatch())
            .map(r -> r.batch)
            .distinct()
            .map(all::get)
            .toList();
    if (body.beast.uncut() ? settled : hasEndProduct()) {
      weigh();
      takeHome();
      balance();
    }
  }

  private boolean hasEndProduct() {
    return body.cuts().stream().anyMatch(r -> r.isPack() || r.is("bin"))
        || batches.stream().anyMatch(b -> !b.open);
  }

  private BigFraction sum(Predicate<Row> which) {
    return BodyFigures.sum(body.rows.stream().filter(which).toList());
  }

  private String kind(Row row) {
    return body.tree.kind(row.item);
  }

  private boolean noBins() {
    return body.setup.bins().equals("no");
  }

  private void weigh() {
    offal = sum(r -> r.isPack() && body.isOffal(r));
    tub = sum(r -> r.is("tub") && r.hasBatch());
    railTrim = sum(r -> r.isOut() && body.isTrim(r));
    if (!noBins()) {
      bone = sum(r -> r.is("bin") && kind(r).equals("bone"));
      fat = sum(r -> r.is("bin") && kind(r).equals("fat"));
      waste = sum(r -> r.is("bin") && !Set.of("bone", "fat").contains(kind(r)));
    }
    boolean open = batches.stream().anyMatch(b -> b.open);
    batchLoss = open ? null : tub.subtract(batchPart());
  }

  BigFraction batchPart() {
    return batches.stream()
        .map(b -> b.part(body.beast.id()))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private void takeHome() {
    if (body.beast.uncut()) {
      takeHome = body.beast.condemned() ? BigFraction.ZERO : body.boning;
    } else {
      takeHome = sum(r -> r.isPack() && !body.isOffal(r)).add(batchPart());
      meatHome = sum(r -> r.isPack() && Set.of("meat", "trim").contains(kind(r))).add(batchPart());
    }
  }

  private void balance() {
    if (body.beast.uncut() || body.boning == null) {
      return;
    }
    var out = body.products();
    if (noBins()) {
      var weighed = out.stream().filter(r -> !r.is("bin")).toList();
      unweighed = body.boning.subtract(BodyFigures.sum(weighed));
      return;
    }
    var unit = body.setup.unit;
    cuttingLoss = body.boning.subtract(BodyFigures.sum(out));
    balanceSquare = Resolution.square(body.boningRows, unit).add(Resolution.square(out, unit));
    scaleSquare = Resolution.scales(body.boningRows, out, unit);
  }

  /** Whole days from the kill to the first cut, or to the last time on the rail; or null. */
  Long daysHung() {
    if (!body.beast.uncut()) {
      return body.daysHung();
    }
    var last = body.lastRail();
    return !settled || last == null || body.beast.killed() == null
        ? null
        : ChronoUnit.DAYS.between(body.beast.killed(), body.dateOf(last));
  }

  boolean tested() {
    return cuttingLoss != null && body.setup.bins().equals("weighed");
  }

  private BigFraction doubt() {
    return scaleSquare == null ? balanceSquare : balanceSquare.add(scaleSquare);
  }

  boolean lossNegative() {
    return tested() && Num.exceedsRoot(cuttingLoss.negate(), doubt());
  }

  boolean lossHigh() {
    return tested() && Num.exceedsRoot(cuttingLoss.subtract(limit()), doubt());
  }

  private BigFraction limit() {
    var percent = body.setup.number("limit.cutting_loss_pct", "3.0");
    return body.boning.multiply(percent).divide(Num.HUNDRED).add(hangingAllowed());
  }

  /** What it may lose while it hangs after its last rail weight, without being weighed again. */
  BigFraction hangingAllowed() {
    int days = daysUnweighed() > DAYS_UNWEIGHED ? daysUnweighed() : 0;
    var percent = body.setup.number("limit.hanging_pct_per_day", "0.4").multiply(days);
    return body.boning.multiply(percent).divide(Num.HUNDRED);
  }

  /** Days from the last standing rail weight to the first cut; 0 with an aged weight. */
  int daysUnweighed() {
    var hung = body.dateOf(body.lastStanding());
    if (hung == null || !body.standing.rows("aged").isEmpty() || body.cuts().isEmpty()) {
      return 0;
    }
    return (int) ChronoUnit.DAYS.between(hung, body.dateOf(body.cuts().get(0).time));
  }
}
