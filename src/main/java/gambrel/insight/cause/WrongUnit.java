package gambrel.insight.cause;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds pounds taken for kilograms, or the reverse: in one row, or on a scale's whole day. */
final class WrongUnit extends Finder {
  private static final long A_DAY = 200;
  private static final long A_BODY = 300;
  private static final long A_ROW = 200;
  private static final int LEAST_ROWS = 3;

  WrongUnit(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return Stream.of(
            suspect.weighings().stream().flatMap(row -> oneRow(row).stream()),
            rows.days(suspect.id()).flatMap(this::ofDay),
            packsOfBatches().flatMap(packs -> together(packs, A_BODY).stream()))
        .flatMap(Function.identity());
  }

  /** All that a scale weighed on a day, and what it weighed of the suspect. */
  private Stream<Candidate> ofDay(List<Weighing> day) {
    var own = day.stream().filter(w -> w.body().equals(suspect.id())).toList();
    var all = own.size() < day.size() ? together(day, A_DAY) : Optional.<Candidate>empty();
    return Stream.concat(all.stream(), together(own, A_BODY).stream());
  }

  /** The packs of batches that are out of balance, for each scale and day. */
  private Stream<List<Weighing>> packsOfBatches() {
    return suspect.weighings().stream()
        .filter(weighing -> weighing.inBatch() && weighing.step() == Step.PACK)
        .collect(
            Collectors.groupingBy(RowIndex.ScaleDay::of, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream();
  }

  private Optional<Candidate> oneRow(Weighing row) {
    return changes(List.of(row))
        .map(changes -> changes.get(0))
        .flatMap(
            change ->
                rows.ranges()
                    .ofOthers(row)
                    .filter(range -> !range.holds(row.net().hundredThousandths()))
                    .filter(range -> range.holds(change.net()))
                    .map(
                        range ->
                            Candidate.of(Cause.UNIT, change, A_ROW).comparedWith(range.phrase())));
  }

  private Optional<Candidate> together(List<Weighing> some, long penalty) {
    return changes(some)
        .filter(changes -> changes.size() >= LEAST_ROWS)
        .map(changes -> Candidate.of(Cause.UNIT, changes, penalty));
  }

  /** Rows read in the other unit; empty if one was corrected or is in neither unit. */
  private Optional<List<RowChange>> changes(List<Weighing> some) {
    var changes =
        some.stream()
            .filter(rows::isUncorrected)
            .flatMap(
                w -> other(w.unit()).map(unit -> RowChange.unit(w, unit, rows.unit())).stream())
            .toList();
    return Optional.of(changes).filter(list -> list.size() == some.size());
  }

  private static Optional<WeightUnit> other(WeightUnit unit) {
    return switch (unit) {
      case KG -> Optional.of(WeightUnit.LB);
      case LB -> Optional.of(WeightUnit.KG);
      default -> Optional.empty();
    };
  }
}
