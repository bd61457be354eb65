package gambrel.insight.cause;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds pounds taken for kilograms, or the other way round: a row, or a scale's whole day. */
final class WrongUnit implements Finder {
  private static final long A_DAY = 200;
  private static final long A_BODY = 300;
  private static final long A_ROW = 200;
  private static final int LEAST_ROWS = 3;

  private final RowIndex traces;
  private final CodeRanges ranges;

  WrongUnit(RowIndex traces, CodeRanges ranges) {
    this.traces = traces;
    this.ranges = ranges;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var row : suspect.weighings()) {
      oneRow(row).ifPresent(candidates::add);
    }
    for (var shift : traces.shiftsOf(suspect.id())) {
      var own = shift.stream().filter(w -> w.body().equals(suspect.id())).toList();
      if (own.size() < shift.size()) {
        together(shift, A_DAY).ifPresent(candidates::add);
      }
      together(own, A_BODY).ifPresent(candidates::add);
    }
    batches(suspect).forEach(rows -> together(rows, A_BODY).ifPresent(candidates::add));
    return candidates;
  }

  /** The packs of a batch that is out, scale by scale and day by day. */
  private static Collection<List<Weighing>> batches(BodyFacts suspect) {
    return suspect.weighings().stream()
        .filter(weighing -> weighing.inBatch() && weighing.step() == Step.PACK)
        .collect(Collectors.groupingBy(ScaleDay::of, LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  private Optional<Candidate> oneRow(Weighing row) {
    var other = other(row.unit());
    if (other.isEmpty() || !traces.isUntouched(row)) {
      return Optional.empty();
    }
    long net = row.net().hundredThousandths();
    var touch = new RowChange(row, new ProposedFix.In(other.get()));
    long then = touch.netThen(traces.night().shop().settings().unit());
    return ranges
        .ofOthers(row)
        .filter(range -> !range.holds(net) && range.holds(then))
        .map(range -> Candidate.of(Cause.UNIT, touch, A_ROW).with("witness", range.words()));
  }

  private Optional<Candidate> together(List<Weighing> rows, long penalty) {
    boolean all =
        rows.size() >= LEAST_ROWS
            && rows.stream().allMatch(w -> traces.isUntouched(w) && other(w.unit()).isPresent());
    return all
        ? Optional.of(
            Candidate.of(
                Cause.UNIT,
                rows.stream()
                    .map(w -> new RowChange(w, new ProposedFix.In(other(w.unit()).orElseThrow())))
                    .toList(),
                penalty))
        : Optional.empty();
  }

  private static Optional<WeightUnit> other(WeightUnit unit) {
    return switch (unit) {
      case KG -> Optional.of(WeightUnit.LB);
      case LB -> Optional.of(WeightUnit.KG);
      default -> Optional.empty();
    };
  }
}
