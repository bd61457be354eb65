package gambrel.insight.cause;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tries the most likely changes for a body and keeps those that make it balance. */
record Examiner(RowIndex rows) {
  /** So many changes are tried for a body; sums choose them. */
  private static final int MOST_TRIALS = 8;

  /** A change may leave another body within three spreads, or as odd as it is. */
  private static final long UNHARMED = Usual.Range.strainOf(3);

  /** Another row does not replace a rail weight that is missing, nor remove one too many. */
  private static final Set<ReasonCode> OF_RAIL =
      EnumSet.of(ReasonCode.RAIL_MISSING, ReasonCode.PARTS_MISSING, ReasonCode.ROW_SET_ASIDE);

  /** What may be wrong with a body that balances and has an odd chill shrink. */
  private static final Set<Cause> OF_ODD_SHRINK = EnumSet.of(Cause.HOOK, Cause.UNIT, Cause.DECIMAL);

  /** An open body has no balance yet that could contradict a change. */
  private static final long OPEN_PENALTY = 300;

  private static final int MOST_SUGGESTIONS = 3;

  /** A suggestion that costs so much more than the best is not listed beside it. */
  private static final long ABOUT_EQUAL = 300;

  /**
   * A suggestion and how well it explains the body's figures.
   *
   * @param suggestion what is suggested
   * @param cost lower is better, on the scale of {@link Usual.Range#strain}
   * @param kind equal for suggestions of which only the best is listed
   */
  record Scored(Suggestion suggestion, long cost, String kind) {}

  /** At most three suggestions for a body, best first. */
  List<Suggestion> suggestions(BodyFacts suspect) {
    var found = new ArrayList<>(changes(suspect));
    if (suspect.isUnbalanced()) {
      var missing = new MissingWeighing(rows, suspect);
      missing.bins().forEach(found::add);
      if (found.isEmpty()) {
        missing.part().ifPresent(found::add);
      }
    }
    return best(found);
  }

  /** The best suggestion and those that cost about as much: at most three, one of each kind. */
  private static List<Suggestion> best(List<Scored> all) {
    var kinds = new HashSet<String>();
    long least = all.stream().mapToLong(Scored::cost).min().orElse(0);
    return all.stream()
        .filter(scored -> scored.cost() <= least + ABOUT_EQUAL)
        .sorted(Comparator.comparingLong(Scored::cost))
        .filter(scored -> kinds.add(scored.kind()))
        .limit(MOST_SUGGESTIONS)
        .map(Scored::suggestion)
        .toList();
  }

  /** Changes of rows that make a body balance and put no other body out of balance. */
  private List<Scored> changes(BodyFacts suspect) {
    return Stream.of(
            new DoublePress(rows, suspect).candidates(),
            new WrongBody(rows, suspect).candidates(),
            new TareLeftOn(rows, suspect).candidates(),
            new MisreadWeight(rows, suspect).candidates())
        .flatMap(found -> found)
        .filter(candidate -> mayMend(candidate, suspect))
        .sorted(
            Comparator.comparing(Candidate::estimated)
                .thenComparingLong(candidate -> candidate.cost(rows)))
        .limit(MOST_TRIALS)
        .flatMap(candidate -> tried(suspect, candidate).stream())
        .toList();
  }

  /** Whether a change may mend a body as far as sums show, so that it is worth trying. */
  private boolean mayMend(Candidate candidate, BodyFacts suspect) {
    if (!candidate.estimated()) {
      return true;
    }
    var codes = suspect.faultCodes();
    if (codes.isEmpty()) {
      return OF_ODD_SHRINK.contains(candidate.cause()) && candidate.changesRail();
    }
    if (codes.contains(ReasonCode.LOSS_HIGH) || codes.contains(ReasonCode.LOSS_NEGATIVE)) {
      return Collections.disjoint(codes, OF_RAIL)
          && candidate.lossStrain(rows, suspect.id) <= BodyFacts.BALANCED;
    }
    return codes.contains(ReasonCode.BATCH_OUT)
        && candidate.changes().stream()
            .anyMatch(change -> suspect.unbalancedBatchRows().anyMatch(change.weighing()::equals));
  }

  private Optional<Scored> tried(BodyFacts suspect, Candidate candidate) {
    Set<String> bodies = new LinkedHashSet<>(candidate.bodies());
    bodies.add(suspect.id);
    var corrections = new CorrectionLines(rows).of(candidate);
    var then = trial(bodies, corrections);
    long cost = candidate.penalty();
    for (String body : bodies) {
      var before = rows.facts(body);
      var after = rows.facts(then, body);
      if (!(body.equals(suspect.id) ? balances(before, after) : isUnharmed(before, after))) {
        return Optional.empty();
      }
      boolean open = before.account.decision().state() == State.OPEN;
      cost += after.strain() - before.strain() + (open ? OPEN_PENALTY : 0);
    }
    var evidence = new EvidenceText(rows, suspect, candidate, then).phrase();
    var suggestion =
        suggestion(suspect, candidate, corrections, evidence, rows.facts(then, suspect.id));
    return Optional.of(new Scored(suggestion, cost, kind(candidate)));
  }

  /**
   * The night of some bodies with corrections added to the shop's. Test weights and charges are
   * left out, since no balance depends on them.
   */
  private Night trial(Set<String> bodies, List<Correction> corrections) {
    var night = rows.night;
    var all = night.ledger().weighings();
    var weighings =
        bodies.stream()
            .flatMap(
                body ->
                    Stream.concat(
                        all.of(body).stream(),
                        rows.facts(body).balance.batches().stream()
                            .flatMap(batch -> all.ofBatch(batch.batch().id()).stream())))
            .filter(weighing -> weighing.step().movesMass())
            .toList();
    var named = new HashSet<>(bodies);
    weighings.forEach(weighing -> named.add(weighing.body()));
    var setAside =
        night.ledger().setAside().stream()
            .filter(aside -> !Collections.disjoint(aside.bodies(), bodies))
            .map(aside -> aside.notice().place());
    var places =
        Stream.concat(weighings.stream().map(Weighing::place), setAside)
            .collect(Collectors.toCollection(TreeSet::new));
    return new Reckoner(shop(night.shop(), named, corrections), files(places)).at(night.asOf());
  }

  private static Shop shop(Shop shop, Set<String> named, List<Correction> corrections) {
    var bodies = new TreeMap<String, Body>(shop.bodies());
    bodies.keySet().retainAll(named);
    return new Shop(
        shop.settings(),
        shop.cuts(),
        shop.ranges(),
        shop.foods(),
        shop.customers(),
        bodies,
        shop.codes(),
        shop.scales(),
        shop.bench(),
        List.of(),
        List.of(),
        shop.batches(),
        List.of(),
        Groups.both(shop.corrections(), corrections),
        shop.releases(),
        shop.unread());
  }

  private List<ExportFile> files(Set<Place> places) {
    return Groups.inOrder(places.stream().map(rows::row), row -> row.place().file())
        .entrySet()
        .stream()
        .map(file -> new ExportFile(file.getKey(), file.getValue()))
        .toList();
  }

  private static boolean balances(BodyFacts before, BodyFacts after) {
    boolean held = before.account.decision().state() == State.HELD;
    return after.account.decision().state() != State.OPEN
        && after.faults().isEmpty()
        && !after.balance.isColdAboveHot()
        && after.lossStrain() <= BodyFacts.BALANCED
        && after.chillStrain() <= Math.max(UNHARMED, held ? before.chillStrain() : 0);
  }

  private static boolean isUnharmed(BodyFacts before, BodyFacts after) {
    return before.faults().containsAll(after.faults())
        && after.lossStrain() <= Math.max(UNHARMED, before.lossStrain())
        && after.chillStrain() <= Math.max(UNHARMED, before.chillStrain());
  }

  /** Of changes that differ only in the length of a run, the best one is enough. */
  private static String kind(Candidate candidate) {
    var first = candidate.first();
    return switch (candidate.cause()) {
      case WRONG_BODY, CHANGEOVER -> candidate.cause() + first.weighing().body() + first.body();
      case HOOK, UNIT -> candidate.cause().id();
      default -> candidate.cause() + first.weighing().place().toString();
    };
  }

  private Suggestion suggestion(
      BodyFacts suspect,
      Candidate candidate,
      List<Correction> corrections,
      Phrase evidence,
      BodyFacts after) {
    var first = candidate.first().weighing();
    return new Suggestion(
        candidate.cause(),
        Notice.of(NoticeCode.LIKELY_CAUSE, evidence, first.place())
            .aboutBody(suspect.id)
            .aboutTicket(first.scale().id(), first.ticket())
            .quoting(rows.row(first.place()).raw()),
        candidate.changes().stream().map(change -> change.weighing().place()).toList(),
        corrections,
        suspect.balance.shares().cuttingLoss(),
        after.balance.shares().cuttingLoss());
  }
}
