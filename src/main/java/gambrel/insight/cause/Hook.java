package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds a hook, gambrel or roller that hung on the scale at one step and not at the other. */
final class Hook extends Finder {
  private static final long PENALTY = 200;

  /** Parts of a body shrink alike; so many millionths of difference cost 1. */
  private static final long UNEVEN = 100;

  private static final long MOST_UNEVEN = 300;

  Hook(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    return Stream.of(Step.HOT, Step.COLD, Step.AGED).flatMap(this::candidates);
  }

  /** Each hook weight taken off each row of a step, then off all its rows. */
  private Stream<Candidate> candidates(Step step) {
    var all = of(step).stream().filter(rows::isUncorrected).toList();
    var other = of(step == Step.COLD ? Step.HOT : Step.COLD);
    var choices = new ArrayList<List<Weighing>>();
    all.forEach(weighing -> choices.add(List.of(weighing)));
    if (all.size() > 1) {
      choices.add(all);
    }
    return weights(all)
        .flatMap(
            tare -> choices.stream().flatMap(some -> without(tare, some, all, other).stream()));
  }

  private List<Weighing> of(Step step) {
    return suspect.balance().weighings().of(step);
  }

  private Optional<Candidate> without(
      BigDecimal tare, List<Weighing> some, List<Weighing> all, List<Weighing> other) {
    var changes = some.stream().flatMap(row -> rows.tares().take(row, tare).stream()).toList();
    return changes.size() < some.size()
        ? Optional.empty()
        : Optional.of(
            Candidate.of(Cause.HOOK, changes, PENALTY + unevenness(changes, all, other))
                .comparedWith(new Value.Shown(Tares.plain(tare), some.get(0).unit())));
  }

  /** How differently the parts would have shrunk from one step to the other. */
  private static long unevenness(
      List<RowChange> changes, List<Weighing> all, List<Weighing> other) {
    if (all.size() != other.size()) {
      return 0;
    }
    var then = new HashMap<Weighing, Long>();
    all.forEach(row -> then.put(row, row.net().hundredThousandths()));
    changes.forEach(change -> then.put(change.weighing(), change.net()));
    var nets = then.values().stream().sorted().toList();
    var others = other.stream().map(w -> w.net().hundredThousandths()).sorted().toList();
    var shares =
        IntStream.range(0, nets.size())
            .mapToLong(i -> nets.get(i) * 1_000_000 / Math.max(1, others.get(i)))
            .summaryStatistics();
    return Math.min(MOST_UNEVEN, (shares.getMax() - shares.getMin()) / UNEVEN);
  }

  /** Known hook weights: the tares that rows of these codes show, and those of rail codes. */
  private Stream<BigDecimal> weights(List<Weighing> all) {
    if (all.isEmpty() || all.stream().anyMatch(this::isTared)) {
      return Stream.empty();
    }
    var lacking = all.stream().flatMap(w -> rows.tares().lacking(w).stream()).map(l -> l.tare());
    var ofCodes =
        rows.night().shop().codes().stream()
            .filter(code -> code.step().isRail())
            .flatMap(code -> rows.tares().in(all.get(0).unit(), code).stream());
    return Stream.concat(lacking, ofCodes).map(Tares::plain).distinct();
  }

  /** Whether a row shows a tare, or comes gross and has its code's taken off. */
  private boolean isTared(Weighing row) {
    return rows.tares().lacking(row).isEmpty()
        && (rows.cell(row, Field.NET).isEmpty() || !rows.cell(row, Field.TARE).isEmpty());
  }
}
