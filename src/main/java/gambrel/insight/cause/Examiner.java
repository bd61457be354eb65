package gambrel.insight.cause;

import static gambrel.insight.cause.BodyFacts.Shift.NONE;

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

  /**
   * A suggestion explains so much more than that the bodies are odd by nature: odds of 50 to 1, as
   * {@link Odds} has them.
   */
  private static final long LEAST_GAIN = 800;

  /** What may be wrong with a body that balances and has an odd chill shrink. */
  private static final Set<Cause> OF_ODD_SHRINK =
      EnumSet.of(Cause.HOOK, Cause.UNIT, Cause.DECIMAL, Cause.DIGITS_TRANSPOSED);

  /** What heals of an open body, of which more may be cut, counts no more than this. */
  private static final long MOST_OF_OPEN = 800;

  private static final int MOST_SUGGESTIONS = 3;

  /** How the kind of a suggestion begins that keys rows to another body. */
  private static final String MOVED = "moved to ";

  /** A suggestion that explains so much less than the best is not listed beside it. */
  private static final long ABOUT_EQUAL = 500;

  /** With a lead smaller than this over another kind, none of the two is likely enough to tell. */
  private static final long LEAST_LEAD = 200;

  /**
   * A suggestion and how well it explains the figures.
   *
   * @param suggestion what is suggested
   * @param gain by how much more likely the figures are with it than by nature, as {@link Odds} has
   *     them; higher is better
   * @param kind equal for suggestions of which only the best is listed
   */
  record Scored(Suggestion suggestion, long gain, String kind) {
    /** Whether another suggestion says about the same; moves do if they share a row. */
    boolean isLike(Scored other) {
      return kind.equals(other.kind)
          && !(kind.startsWith(MOVED)
              && Collections.disjoint(suggestion.rows(), other.suggestion.rows()));
    }
  }

  /** At most three suggestions for a body, best first. */
  List<Suggestion> suggestions(BodyFacts suspect) {
    var found = new ArrayList<>(changes(suspect));
    if (suspect.isUnbalanced()) {
      var missing = new MissingWeighing(rows, suspect);
      missing.products().forEach(found::add);
      if (found.stream().noneMatch(scored -> scored.gain() >= LEAST_GAIN)) {
        missing.part().ifPresent(found::add);
      }
    }
    return best(found);
  }

  /**
   * The best suggestion and those that explain about as much: at most three, one of each kind. None
   * if the best does not explain enough, or hardly more than another.
   */
  private static List<Suggestion> best(List<Scored> all) {
    var best = new ArrayList<Scored>();
    all.stream()
        .filter(scored -> scored.gain() >= LEAST_GAIN)
        .sorted(Comparator.comparingLong(Scored::gain).reversed())
        .filter(scored -> best.stream().noneMatch(scored::isLike))
        .limit(MOST_SUGGESTIONS)
        .forEach(best::add);
    if (best.size() > 1 && best.get(0).gain() - best.get(1).gain() < LEAST_LEAD) {
      return List.of();
    }
    return best.stream()
        .filter(scored -> scored.gain() > best.get(0).gain() - ABOUT_EQUAL)
        .map(Scored::suggestion)
        .toList();
  }

  /** Changes of rows that make a body balance and put no other body out of balance. */
  private List<Scored> changes(BodyFacts suspect) {
    var candidates =
        Stream.of(
                new DoublePress(rows, suspect).candidates(),
                new WrongBody(rows, suspect).candidates(),
                new WrongBatch(rows, suspect).candidates(),
                new TareLeftOn(rows, suspect).candidates(),
                new HookWeighed(rows, suspect).candidates(),
                new MisreadWeight(rows, suspect).candidates())
            .flatMap(found -> found);
    var groups = Groups.inOrder(candidates, Candidate::group);
    return groups.values().stream()
        .flatMap(group -> group.stream().flatMap(one -> promising(suspect, one, group.size())))
        .sorted(Comparator.comparingLong(Estimate::gain).reversed())
        .limit(MOST_TRIALS)
        .flatMap(estimate -> tried(suspect, estimate).stream())
        .toList();
  }

  /**
   * A change with what it probably explains.
   *
   * @param chance what is taken off because it is unlikely before any figure is looked at
   * @param gain estimated from sums; without an estimate the highest
   */
  private record Estimate(Candidate candidate, long chance, long gain) {}

  /** A change, one of {@code alike}, if it may mend a body as far as sums show; else none. */
  private Stream<Estimate> promising(BodyFacts suspect, Candidate candidate, int alike) {
    long chance = candidate.prior() + Odds.of(alike);
    if (!candidate.estimated()) {
      return Stream.of(new Estimate(candidate, chance, Long.MAX_VALUE));
    }
    if (!mayMend(candidate, suspect)) {
      return Stream.empty();
    }
    var shifts = candidate.shifts(rows);
    var own = shifts.getOrDefault(suspect.id, NONE);
    if (suspect.lossStrain(own) > BodyFacts.BALANCED) {
      return Stream.empty();
    }
    long gain = -chance;
    long products = 0;
    for (var shift : shifts.entrySet()) {
      var facts = rows.facts(shift.getKey());
      gain += facts.strain(NONE) - facts.strain(shift.getValue());
      products += facts.productStrain() - facts.productStrain(shift.getValue());
    }
    gain += candidate.withProducts(products);
    for (var shift : candidate.batchShifts().entrySet()) {
      var facts = rows.batch(shift.getKey());
      gain += facts.strain(BatchFacts.Shift.NONE) - facts.strain(shift.getValue());
    }
    return gain < LEAST_GAIN ? Stream.empty() : Stream.of(new Estimate(candidate, chance, gain));
  }

  /** Whether a change is of a kind that may mend what is wrong with a body. */
  private static boolean mayMend(Candidate candidate, BodyFacts suspect) {
    var codes = suspect.faultCodes();
    if (codes.isEmpty()) {
      return OF_ODD_SHRINK.contains(candidate.cause()) && candidate.changesRail();
    }
    return codes.contains(ReasonCode.LOSS_HIGH) || codes.contains(ReasonCode.LOSS_NEGATIVE)
        ? !suspect.lacksRail()
        : suspect
            .unbalancedBatches()
            .anyMatch(batch -> candidate.batches().contains(batch.batch().id()));
  }

  private Optional<Scored> tried(BodyFacts suspect, Estimate estimate) {
    var candidate = estimate.candidate();
    Set<String> bodies = new LinkedHashSet<>(candidate.bodies());
    bodies.add(suspect.id);
    var corrections = new CorrectionLines(rows).of(candidate);
    var then = trial(bodies, candidate.batches(), corrections);
    long gain = -estimate.chance();
    long products = 0;
    for (String body : bodies) {
      var before = rows.facts(body);
      var after = rows.facts(then, body);
      if (!(body.equals(suspect.id) ? balances(before, after) : isNoFurther(before, after))) {
        return Optional.empty();
      }
      boolean open = before.account.decision().state() == State.OPEN;
      long healed = before.strain() - after.strain();
      gain += open ? Math.min(MOST_OF_OPEN, healed) : healed;
      products += before.productStrain() - after.productStrainBeside(before);
    }
    gain += candidate.withProducts(products);
    for (String batch : candidate.batches()) {
      var before = rows.batch(batch);
      var after = rows.batch(then, batch);
      if (!isNoFurther(before.distance(), after.distance())) {
        return Optional.empty();
      }
      gain += before.strain(BatchFacts.Shift.NONE) - after.strain(BatchFacts.Shift.NONE);
    }
    var evidence = new EvidenceText(rows, suspect, candidate, then).phrase();
    var suggestion =
        suggestion(suspect, candidate, corrections, evidence, rows.facts(then, suspect.id));
    return Optional.of(new Scored(suggestion, gain, kind(candidate)));
  }

  /**
   * The night of some bodies with corrections added to the shop's. Test weights and charges are
   * left out, since no balance depends on them.
   */
  private Night trial(Set<String> bodies, Set<String> batches, List<Correction> corrections) {
    var night = rows.night;
    var all = night.ledger().weighings();
    var withBatches = new TreeSet<>(batches);
    bodies.stream()
        .flatMap(body -> rows.facts(body).balance.batches().stream())
        .forEach(batch -> withBatches.add(batch.batch().id()));
    var weighings =
        Stream.concat(
                bodies.stream().flatMap(body -> all.of(body).stream()),
                withBatches.stream().flatMap(batch -> all.ofBatch(batch).stream()))
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
    return after.account.decision().state() != State.OPEN
        && after.faults().isEmpty()
        && !after.balance.isColdAboveHot()
        && after.lossStrain(NONE) <= BodyFacts.BALANCED
        && after.chillStrain(NONE) <= Math.max(BodyFacts.BALANCED, before.chillStrain(NONE));
  }

  /** Whether a change puts another body no further from what is usual in any way. */
  private static boolean isNoFurther(BodyFacts before, BodyFacts after) {
    return before.faults().containsAll(after.faults())
        && isNoFurther(before.lossDistance(), after.lossDistance())
        && isNoFurther(before.chillDistance(), after.chillDistance())
        && (before.lossDistance().isPresent() || after.lossStrain(NONE) <= BodyFacts.BALANCED)
        && after.strain() + after.productStrainBeside(before)
            <= before.strain() + before.productStrain();
  }

  /** What is not known now may be anything. */
  private static boolean isNoFurther(Optional<Long> before, Optional<Long> after) {
    return before.isEmpty() || after.isPresent() && after.get() <= before.get();
  }

  /** Of changes that differ only in the length of a run, the best one is enough. */
  private static String kind(Candidate candidate) {
    var first = candidate.first();
    return switch (candidate.cause()) {
      case WRONG_BODY, CHANGEOVER -> MOVED + first.body();
      case HOOK, UNIT -> candidate.cause().id();
      default -> first.weighing().place() + " " + first.cells();
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
        candidate.exact() ? corrections : List.of(),
        suspect.balance.shares().cuttingLoss(),
        after.balance.shares().cuttingLoss());
  }
}
