package gambrel.trade.decision;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Decides at one moment whether bodies are open, held, issued, closed or cancelled. */
public final class Decider {
  private final Settings settings;
  private final OffsetDateTime asOf;
  private final Judge judge;
  private final Releases releases;

  /** A decider for the moment {@code asOf}. */
  public Decider(Settings settings, OffsetDateTime asOf, Judge judge, Releases releases) {
    this.judge = judge;
    this.releases = releases;
    this.settings = settings;
    this.asOf = asOf;
  }

  /** The reasons that hold a body; empty while it is open, and if it is cancelled. */
  public Set<Reason> holding(BodyBalance balance, Bill bill) {
    boolean decided =
        balance.body().outcome() != Outcome.CANCELLED
            && (releases.isClosed(balance) || whyOpen(balance).isEmpty());
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
    var open = whyOpen(balance);
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

  /**
   * Why the body is open. Empty if it is not open; an empty list if only its quiet hours have not
   * passed, or it has no end product yet.
   */
  private Optional<List<Reason>> whyOpen(BodyBalance balance) {
    var waiting = new ArrayList<Reason>();
    balance.batches().stream()
        .filter(b -> b.isOpen() && !b.late() && b.batch().due().isEmpty())
        .forEach(b -> waiting.add(batchOpen(b.batch().id())));
    if (isPartCut(balance)) {
      waiting.add(new Reason(ReasonCode.PART_CUT, ""));
    }
    return waiting.isEmpty() && isFinished(balance) ? Optional.empty() : Optional.of(waiting);
  }

  private static Reason batchOpen(String batch) {
    return new Reason(ReasonCode.BATCH_OPEN, batch).with("batch", batch);
  }

  private boolean isFinished(BodyBalance balance) {
    if (balance.body().outcome() != Outcome.CUT) {
      return isQuietSince(balance.weighings().rail());
    }
    boolean cut = balance.cuts().stream().anyMatch(w -> w.step() != Step.BLOCK);
    return cut && isQuietSince(balance.weighings().all());
  }

  private boolean isQuietSince(List<Weighing> weighings) {
    return !weighings.isEmpty()
        && hasPassed(settings.quietHours(), weighings.get(weighings.size() - 1).time());
  }

  private boolean isPartCut(BodyBalance balance) {
    boolean isHigh =
        LossLimit.fault(settings, balance)
            .filter(reason -> reason.code() == ReasonCode.LOSS_HIGH)
            .isPresent();
    return isHigh
        && balance.lastCut().filter(c -> !hasPassed(24 * settings.cuttingDays(), c)).isPresent();
  }

  private boolean hasPassed(int hours, OffsetDateTime time) {
    return Duration.between(time, asOf).compareTo(Duration.ofHours(hours)) >= 0;
  }
}
