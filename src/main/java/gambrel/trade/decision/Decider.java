package gambrel.trade.decision;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.notice.Phrase;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Release;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Decides at one moment whether bodies are open, held, issued, closed or cancelled.
 *
 * @param judge finds the reasons at that moment
 * @param releases the releases in force at that moment
 */
public record Decider(Judge judge, Releases releases) {
  /**
   * The reasons that hold a body and that a release can cover; none while it is open, and if it is
   * cancelled.
   */
  public Set<Reason> releasable(BodyBalance balance, Bill bill) {
    boolean decided = !releases.closes(balance).isEmpty() || whyOpen(balance).isEmpty();
    return decided
        ? judge.reasons(balance, bill).stream()
            .filter(reason -> reason.code().isReleasable())
            .collect(Collectors.toSet())
        : Set.of();
  }

  /** The closes of a body that may cover a reason which holds it now: that it gave too little. */
  public List<Release> closes(BodyBalance balance) {
    return judge.homeLow(balance, false).isPresent() ? releases.closes(balance) : List.of();
  }

  /**
   * The decision about a body.
   *
   * @param released the reasons that releases and closes cover
   */
  public Decision decide(
      BodyBalance balance, Bill bill, Map<String, Entitlement> entitlements, Set<Reason> released) {
    if (balance.body().outcome() == Outcome.CANCELLED) {
      return new Decision(State.CANCELLED, List.of(), List.of());
    }
    var open = whyOpen(balance);
    if (open.isPresent() && releases.closes(balance).isEmpty()) {
      return new Decision(State.OPEN, open.get(), List.of());
    }
    var holding = new ArrayList<Reason>();
    var covered = new ArrayList<Reason>();
    for (var reason : judge.reasons(balance, bill)) {
      (released.contains(reason) ? covered : holding).add(reason);
    }
    if (!holding.isEmpty()) {
      return new Decision(State.HELD, holding, covered);
    }
    boolean own = entitlements.keySet().stream().allMatch(Customer.SHOP::equals);
    return new Decision(own ? State.CLOSED : State.ISSUED, List.of(), covered);
  }

  /**
   * Why the body is open. Empty if it is not open; an empty list if only its quiet hours have not
   * passed, or it has no end product yet.
   */
  private Optional<List<Reason>> whyOpen(BodyBalance balance) {
    var waiting = new ArrayList<Reason>();
    balance.batches().stream()
        .filter(b -> b.isOpen() && !b.late() && b.batch().due().isEmpty())
        .map(b -> b.batch().id())
        .forEach(id -> waiting.add(new Reason(ReasonCode.BATCH_OPEN, id).with("batch", id)));
    if (judge.isCutLately(balance)) {
      judge.incomplete(balance).map(Decider::partCut).ifPresent(waiting::add);
    }
    return waiting.isEmpty() && balance.finished() ? Optional.empty() : Optional.of(waiting);
  }

  /** That a body is cut in part, with the numbers that show it. */
  private static Reason partCut(Reason fault) {
    return new Reason(
        ReasonCode.PART_CUT, "", new Phrase("REASON.PART_CUT", fault.saying().values()));
  }
}
