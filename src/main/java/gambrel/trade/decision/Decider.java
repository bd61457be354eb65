package gambrel.trade.decision;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Decides where bodies stand. */
public final class Decider {
  private final Judge judge;
  private final Releases releases;
  private final Openness openness;

  /** For one moment. */
  public Decider(Settings settings, OffsetDateTime asOf, Judge judge, Releases releases) {
    this.judge = judge;
    this.releases = releases;
    this.openness = new Openness(settings, asOf, judge);
  }

  /** The reasons that hold a body which is finished; nothing while it is open. */
  public Set<Reason> holding(BodyBalance balance, Bill bill) {
    boolean decided =
        balance.body().outcome() != Outcome.CANCELLED
            && (releases.isClosed(balance) || openness.of(balance).isEmpty());
    return decided ? judge.reasons(balance, bill) : Set.of();
  }

  /**
   * The decision about a body.
   *
   * @param released the reasons that releases cover
   */
  public Decision decide(
      BodyBalance balance, Bill bill, Map<String, Entitlement> entitlements, Set<Reason> released) {
    if (balance.body().outcome() == Outcome.CANCELLED) {
      return new Decision(State.CANCELLED, List.of(), List.of());
    }
    var open = openness.of(balance);
    if (open.isPresent() && !releases.isClosed(balance)) {
      return new Decision(State.OPEN, open.get(), List.of());
    }
    var holding = new ArrayList<Reason>();
    var covered = new ArrayList<Reason>();
    for (var reason : judge.reasons(balance, bill)) {
      boolean isCovered = reason.code().isReleasable() && released.contains(reason);
      (isCovered ? covered : holding).add(reason);
    }
    if (!holding.isEmpty()) {
      return new Decision(State.HELD, holding, covered);
    }
    boolean own = entitlements.keySet().stream().allMatch(Customer.SHOP::equals);
    return new Decision(own ? State.CLOSED : State.ISSUED, List.of(), covered);
  }
}
