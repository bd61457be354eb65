package gambrel.oracle;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A body's weights on the rail and which of its weighings belong to which step. */
final class BodyFigures {
  final Beast beast;
  final Tree tree;
  final Setup setup;

  /** Mass-moving weighings that count, packs of batches left out, in order of time. */
  final List<Row> rows = new ArrayList<>();

  final Standing standing;
  final Rail rail;
  final BigFraction hot;
  final BigFraction cold;
  final BigFraction boning;
  final List<Row> boningRows;

  private final Instant firstRail;
  private final LocalDate firstCold;
  private final LocalDate firstAged;

  BodyFigures(Beast beast, Setup setup, Standing standing, List<Row> counting) {
    this.beast = beast;
    this.setup = setup;
    this.standing = standing;
    tree = setup.trees.get(beast.species());
    counting.stream()
        .filter(r -> r.movesMass() && !(r.is("pack") && r.hasBatch()) && !r.is("added"))
        .sorted(Row.BY_TIME)
        .forEach(rows::add);
    rail = new Rail(tree, standing, setup.rail(beast.species()).contains("cold"));
    hot = rail.hot == null ? null : rail.hot.weight();
    cold = rail.cold == null ? null : rail.cold.weight();
    boningRows = findBoningRows();
    boning = boningRows.isEmpty() ? null : sum(boningRows);
    firstRail = time(rows(hot == null ? rail.cold : rail.hot), true);
    firstCold = dateOf(time(rows(rail.cold), true));
    var aged = new ArrayList<Row>();
    rail.agedUsed().forEach(component -> aged.addAll(component.rows()));
    firstAged = dateOf(time(aged, true));
  }

  private static List<Row> rows(Cover cover) {
    return cover == null ? List.of() : cover.rows();
  }

  private List<Row> findBoningRows() {
    if (!standing.rows().isEmpty()) {
      return rail.boning == null ? List.of() : rail.boning.rows();
    }
    var blocks = rows.stream().filter(r -> r.is("block")).toList();
    return blocks.stream()
        .filter(
            r ->
                blocks.stream()
                    .noneMatch(b -> !b.item.equals(r.item) && tree.isUnder(r.item, b.item)))
        .toList();
  }

  static BigFraction sum(List<Row> rows) {
    return rows.stream().map(r -> r.net).reduce(BigFraction.ZERO, BigFraction::add);
  }

  private static Instant time(List<Row> rows, boolean first) {
    var times = rows.stream().map(r -> r.time);
    return (first ? times.min(Comparator.naturalOrder()) : times.max(Comparator.naturalOrder()))
        .orElse(null);
  }

  LocalDate dateOf(Instant time) {
    return time == null ? null : setup.localDate(time);
  }

  Instant firstHot() {
    return time(standing.rows("hot"), true);
  }

  Instant lastRail() {
    return time(standing.rows(), false);
  }

  Instant lastStanding() {
    return time(rail.standingRows(), false);
  }

  Instant latest() {
    return time(rows, false);
  }

  boolean isOffal(Row row) {
    return tree.kind(row.item).equals("offal");
  }

  /** Cut off before the cold weighing. */
  boolean isTrimBeforeCold(Row row) {
    return isTrimCandidate(row) && firstCold != null && row.date.isBefore(firstCold);
  }

  /** Cut off before the first aged weighing that the boning weight rests on. */
  boolean isTrimAfterCold(Row row) {
    return isCutBeforeAged(row) && (rail.agedAll || liesUnderAged(row));
  }

  /** Cut off after the cold weighing, and before the first aged one. */
  boolean isCutBeforeAged(Row row) {
    return isTrimCandidate(row)
        && !isTrimBeforeCold(row)
        && firstAged != null
        && row.date.isBefore(firstAged);
  }

  private boolean liesUnderAged(Row row) {
    return rail.agedUsed().stream()
        .flatMap(component -> component.rows().stream())
        .anyMatch(aged -> tree.isUnder(row.item, aged.item));
  }

  private boolean isTrimCandidate(Row row) {
    return (row.isPack() || row.is("tub", "bin"))
        && !isOffal(row)
        && firstRail != null
        && row.time.isAfter(firstRail);
  }

  boolean isTrim(Row row) {
    return isTrimBeforeCold(row) || isTrimAfterCold(row);
  }

  /** Blocks, packs, tubs and bins of the cutting, offal and rail trim left out. */
  List<Row> cuts() {
    return rows.stream()
        .filter(r -> (r.isPack() || r.is("block", "tub", "bin")) && !isOffal(r) && !isTrim(r))
        .toList();
  }

  /** The last of the cuts, or null. */
  Instant lastCut() {
    return time(cuts(), false);
  }

  /** What left the body in cutting and moved mass. */
  List<Row> products() {
    return cuts().stream().filter(Row::isOut).toList();
  }

  /** Trimmed off between the hot and the cold weighing. */
  BigFraction trimBeforeCold() {
    return sum(rows.stream().filter(r -> r.isOut() && isTrimBeforeCold(r)).toList());
  }

  /** Trimmed off between the cold and the aged weighing. */
  BigFraction trimAfterCold() {
    return sum(rows.stream().filter(r -> r.isOut() && isTrimAfterCold(r)).toList());
  }

  /** Weight lost in the chiller, or null. */
  BigFraction chillLoss() {
    return hot == null || cold == null || rail.partsDiffer()
        ? null
        : hot.subtract(cold).subtract(trimBeforeCold());
  }

  BigFraction chillShrink() {
    return Num.percent(chillLoss(), hot);
  }

  /** Cold weight of the parts that were aged; null where nothing was, or it is not known apart. */
  BigFraction coldOfAged() {
    return rail.agedUsed().isEmpty() ? null : rail.coldOfAged();
  }

  /** Weight lost while it hung, or null. */
  BigFraction ageingLoss() {
    var before = coldOfAged();
    if (before == null) {
      return null;
    }
    var after =
        rail.agedUsed().stream()
            .map(Cover.Component::weight)
            .reduce(BigFraction.ZERO, BigFraction::add);
    return before.subtract(after).subtract(trimAfterCold());
  }

  BigFraction ageingShrink() {
    return Num.percent(ageingLoss(), coldOfAged());
  }

  /** The weighings that stand hot and cold. */
  List<Row> hungRows() {
    var hung = new ArrayList<>(rows(rail.hot));
    hung.addAll(rows(rail.cold));
    return hung;
  }

  /** Packs, tubs and bins of any kind. */
  List<Row> cutOut() {
    return rows.stream().filter(r -> r.is("pack", "tub", "bin")).toList();
  }

  /** Whole days from the kill to the first cut, or null. */
  Long daysHung() {
    var first = time(cuts(), true);
    return first == null || beast.killed() == null
        ? null
        : ChronoUnit.DAYS.between(beast.killed(), setup.localDate(first));
  }

  BigFraction hoursChilled() {
    var from = time(standing.rows("hot"), false);
    var to = time(standing.rows("cold"), false);
    return from == null || to == null
        ? null
        : BigFraction.of(
            java.math.BigInteger.valueOf(Duration.between(from, to).toSeconds()),
            java.math.BigInteger.valueOf(3600));
  }
}
