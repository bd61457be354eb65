package gambrel.insight.cause;

import gambrel.trade.notice.NamedValues;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.weighing.Weighing;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A change that might make a body balance.
 *
 * @param cause what would have happened
 * @param changes the rows that change, earliest first; at least one
 * @param prior how unlikely it is before any figure is looked at, beside a body that is odd by
 *     nature; on the scale of {@link Usual.Range#strain}
 * @param witness by how much the rows themselves look less odd with the change, on the same scale
 * @param evidence the sentence that tells it, with the values that only its finder knows
 * @param estimated whether its effect can be estimated from sums, before it is tried
 * @param exact whether the new values are known, so that they can be pasted
 */
record Candidate(
    Cause cause,
    List<RowChange> changes,
    long prior,
    long witness,
    Phrase evidence,
    boolean estimated,
    boolean exact)
    implements NamedValues<Candidate> {
  /** A change of several rows, told by the only sentence of its cause. */
  static Candidate of(Cause cause, List<RowChange> changes, long prior) {
    var evidence = Phrase.of("LIKELY_CAUSE." + cause);
    return new Candidate(cause, changes, prior, 0, evidence, true, true);
  }

  /** A change of one row, told by the only sentence of its cause. */
  static Candidate of(Cause cause, RowChange change, long prior) {
    return of(cause, List.of(change), prior);
  }

  private Candidate evidence(Phrase told) {
    return new Candidate(cause, changes, prior, witness, told, estimated, exact);
  }

  /** A copy told by one of several sentences of its cause. */
  Candidate variant(String variant) {
    return evidence(new Phrase("LIKELY_CAUSE." + cause + '.' + variant, evidence.values()));
  }

  /** A copy with one more value of its sentence. */
  @Override
  public Candidate with(String name, Value value) {
    return evidence(evidence.with(name, value));
  }

  /** A copy whose rows look less odd with the change, by so much. */
  Candidate witnessed(long less) {
    return new Candidate(cause, changes, prior, less, evidence, estimated, exact);
  }

  /** A copy whose effect cannot be estimated, so that it is always tried. */
  Candidate notEstimated() {
    return new Candidate(cause, changes, prior, witness, evidence, false, exact);
  }

  /** A copy whose values are estimates, so that there is nothing to paste. */
  Candidate inexact() {
    return new Candidate(cause, changes, prior, witness, evidence, estimated, false);
  }

  /**
   * By how much rows and products look less odd with the change. An odd weight makes its product
   * odd too, so that the two do not add up.
   *
   * @param products by how much the products of its bodies look less odd
   */
  long withProducts(long products) {
    return witness > 0 && products > 0 ? Math.max(witness, products) : witness + products;
  }

  /** Changes of one group are as likely before any figure is looked at, and share that chance. */
  List<Object> group() {
    Object step = cause == Cause.WRONG_BODY ? first().weighing().step() : "";
    return List.of(evidence.key(), step, prior);
  }

  /** The row that changes first. */
  RowChange first() {
    return changes.get(0);
  }

  /** All bodies that lose or get a row, or have one changed. */
  Set<String> bodies() {
    var bodies = new LinkedHashSet<String>();
    for (var change : changes) {
      bodies.add(change.weighing().body());
      bodies.add(change.body());
    }
    bodies.remove("");
    return bodies;
  }

  /** All batches that lose or get a row, or have one changed. */
  Set<String> batches() {
    var batches = new LinkedHashSet<String>();
    changes.stream()
        .filter(change -> change.weighing().takesPartInBatch())
        .flatMap(change -> Stream.of(change.weighing().batch(), change.batch()))
        .forEach(batches::add);
    return batches;
  }

  /** Whether it changes a weighing on the rail. */
  boolean changesRail() {
    return changes.stream().anyMatch(change -> change.weighing().step().isRail());
  }

  /** By how much the sums of its bodies rise. */
  Map<String, BodyFacts.Shift> shifts(RowIndex rows) {
    var shifts = new HashMap<String, BodyFacts.Shift>();
    for (var change : changes) {
      var weighing = change.weighing();
      if (!weighing.body().isEmpty()) {
        var facts = rows.facts(weighing.body());
        long net = weighing.net().hundredThousandths();
        // The body's own figures say in which sums the row counts, for the body that gets it too.
        var less = facts.shift(weighing, -net);
        var more = facts.shift(weighing, change.net());
        shifts.merge(weighing.body(), less, BodyFacts.Shift::plus);
        shifts.merge(change.body(), more, BodyFacts.Shift::plus);
      }
    }
    return shifts;
  }

  /** By how much the sums of its batches rise. */
  Map<String, BatchFacts.Shift> batchShifts() {
    var shifts = new HashMap<String, BatchFacts.Shift>();
    for (var change : changes) {
      Weighing weighing = change.weighing();
      if (weighing.takesPartInBatch()) {
        long net = weighing.net().hundredThousandths();
        var less = BatchFacts.Shift.of(weighing, -net);
        var more = BatchFacts.Shift.of(weighing, change.net());
        shifts.merge(weighing.batch(), less, BatchFacts.Shift::plus);
        shifts.merge(change.batch(), more, BatchFacts.Shift::plus);
      }
    }
    return shifts;
  }
}
