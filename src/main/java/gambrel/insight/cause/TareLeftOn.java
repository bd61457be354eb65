package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds weighings from which a tare was not taken off: that of a tray or bin; and a hook, gambrel
 * or roller that hung on the scale at one step and not at the other.
 */
record TareLeftOn(RowIndex rows, BodyFacts suspect) {
  private static final long OTHERS_SHOW_IT = 100;
  private static final long ONLY_OF_CODE = 400;
  private static final long LIKE_OTHERS = 200;
  private static final int MOST_ROWS = 12;
  private static final long HOOK = 200;

  /** Parts of a body shrink alike; so many millionths of difference cost 1. */
  private static final long UNEVEN = 100;

  private static final long MOST_UNEVEN = 300;

  Stream<Candidate> candidates() {
    var hooks = Stream.of(Step.HOT, Step.COLD, Step.AGED).flatMap(this::hooks);
    return Stream.concat(traysAndBins(), hooks);
  }

  private Stream<Candidate> traysAndBins() {
    var weighings =
        suspect.weighings().stream()
            .filter(w -> !w.step().isRail() && rows.isUncorrected(w))
            .toList();
    var each = weighings.stream().flatMap(w -> one(w, weighings).stream());
    var all =
        weighings.stream()
            .flatMap(
                w ->
                    rows.tares.lacking(w).filter(Tares.Lacking::shown).stream()
                        .flatMap(lacking -> rows.tares.take(w, lacking.tare()).stream()))
            .toList();
    return all.size() > 1 && all.size() <= MOST_ROWS
        ? Stream.concat(each, Stream.of(Candidate.of(Cause.TARE_LEFT_ON, all, OTHERS_SHOW_IT)))
        : each;
  }

  /** One row less its tare, if others show the tare or no other row of the body has its code. */
  private Optional<Candidate> one(Weighing weighing, List<Weighing> all) {
    return rows.tares
        .lacking(weighing)
        .filter(lacking -> lacking.shown() || isOnly(weighing, all))
        .flatMap(
            lacking ->
                rows.tares
                    .take(weighing, lacking.tare())
                    .map(change -> candidate(change, lacking)));
  }

  private static boolean isOnly(Weighing weighing, List<Weighing> all) {
    return all.stream().filter(other -> other.code().equals(weighing.code())).count() == 1;
  }

  private Candidate candidate(RowChange change, Tares.Lacking lacking) {
    long penalty = lacking.shown() ? OTHERS_SHOW_IT : ONLY_OF_CODE - likeness(change) * LIKE_OTHERS;
    return Candidate.of(Cause.TARE_LEFT_ON, change, penalty)
        .with("witness", new Value.Shown(Tares.plain(lacking.tare()), change.weighing().unit()));
  }

  /** 1 if the change brings the weight into the range of others, -1 if out of it, else 0. */
  private int likeness(RowChange change) {
    long net = change.weighing().net().hundredThousandths();
    return rows.ranges
        .ofOthers(change.weighing())
        .map(range -> Boolean.compare(range.holds(change.net()), range.holds(net)))
        .orElse(0);
  }

  /** Each hook weight taken off each row of a step, then off all its rows. */
  private Stream<Candidate> hooks(Step step) {
    var all = of(step).stream().filter(rows::isUncorrected).toList();
    var other = of(step == Step.COLD ? Step.HOT : Step.COLD);
    var choices =
        Stream.concat(all.stream().map(List::of), Stream.of(all).filter(some -> some.size() > 1))
            .toList();
    return hookWeights(all)
        .flatMap(tare -> choices.stream().flatMap(some -> hook(tare, some, all, other).stream()));
  }

  private List<Weighing> of(Step step) {
    return suspect.balance.weighings().of(step);
  }

  private Optional<Candidate> hook(
      BigDecimal tare, List<Weighing> some, List<Weighing> all, List<Weighing> other) {
    var changes = some.stream().flatMap(row -> rows.tares.take(row, tare).stream()).toList();
    if (changes.size() < some.size()) {
      return Optional.empty();
    }
    var candidate =
        Candidate.of(Cause.HOOK, changes, HOOK + unevenness(changes, all, other))
            .with("witness", new Value.Shown(tare, some.get(0).unit()));
    boolean shrinks = suspect.balance.shares().chillShrink().isPresent();
    return Optional.of(shrinks ? candidate : candidate.variant("NO_SHRINK"));
  }

  /** How differently the parts would have shrunk from one step to the other. */
  private static long unevenness(
      List<RowChange> changes, List<Weighing> all, List<Weighing> other) {
    if (all.size() != other.size()) {
      return 0;
    }
    var then = changes.stream().collect(Collectors.toMap(RowChange::weighing, RowChange::net));
    var nets =
        all.stream()
            .map(row -> then.getOrDefault(row, row.net().hundredThousandths()))
            .sorted()
            .toList();
    var others = other.stream().map(w -> w.net().hundredThousandths()).sorted().toList();
    var shares =
        IntStream.range(0, nets.size())
            .mapToLong(i -> nets.get(i) * 1_000_000 / Math.max(1, others.get(i)))
            .summaryStatistics();
    return Math.min(MOST_UNEVEN, (shares.getMax() - shares.getMin()) / UNEVEN);
  }

  /** Known hook weights: the tares that rows of these codes show, and those of rail codes. */
  private Stream<BigDecimal> hookWeights(List<Weighing> all) {
    if (all.isEmpty() || all.stream().anyMatch(this::isTared)) {
      return Stream.empty();
    }
    var lacking = all.stream().flatMap(w -> rows.tares.lacking(w).stream()).map(l -> l.tare());
    var ofCodes =
        rows.night.shop().codes().stream()
            .filter(code -> code.step().isRail())
            .flatMap(code -> rows.tares.in(all.get(0).unit(), code).stream());
    return Stream.concat(lacking, ofCodes).map(Tares::plain).distinct();
  }

  /** Whether a row shows a tare, or comes gross and has its code's taken off. */
  private boolean isTared(Weighing row) {
    return rows.tares.lacking(row).isEmpty()
        && (rows.cell(row, Field.NET).isEmpty() || !rows.cell(row, Field.TARE).isEmpty());
  }
}
