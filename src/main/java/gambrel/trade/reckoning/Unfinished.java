package gambrel.trade.reckoning;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A body that is open or held.
 *
 * @param account the body
 * @param days whole days from its kill to the night; empty if its kill is not known
 * @param standing the weight into the boning room, before that its hot weight; empty if it was not
 *     weighed
 * @param cut packs, tubs into batches and bins so far; no offal, no rail trim
 * @param rest what is at least still to be weighed of a body that is cut in part, see {@link
 *     Reason#REST}; empty if it is not cut in part, or that is not known
 * @param due the latest day on which one of its open batches is due; empty if none has a day
 * @param cutBy when it is due to be cut; empty once it is on the block, if it is not cut in the
 *     usual way, and if no day is known
 */
public record Unfinished(
    BodyAccount account,
    Optional<Long> days,
    Optional<Weight> standing,
    Weight cut,
    Optional<Weight> rest,
    Optional<LocalDate> due,
    Optional<CutBy> cutBy) {
  /**
   * When a body is due to be cut.
   *
   * @param day the day
   * @param usualDays the days that such bodies usually hang, from which the day is reckoned; empty
   *     if the owner asked for it
   */
  public record CutBy(LocalDate day, Optional<Integer> usualDays) {}

  /** The bodies of a night that are open or held and were killed or weighed, by id. */
  public static List<Unfinished> of(Night night) {
    var today = night.asOf().toLocalDate();
    var usual = new UsualDays(night.bodies().values());
    return night.bodies().values().stream()
        .filter(a -> a.decision().state() == State.OPEN || a.decision().state() == State.HELD)
        .filter(a -> isKilled(a.body(), today) || !a.balance().weighings().all().isEmpty())
        .map(account -> of(account, today, usual))
        .toList();
  }

  private static boolean isKilled(Body body, LocalDate today) {
    return body.killed().filter(day -> !day.isAfter(today)).isPresent();
  }

  private static Unfinished of(BodyAccount account, LocalDate today, UsualDays usual) {
    var balance = account.balance();
    boolean hangs = balance.cuts().isEmpty() && account.body().isCut();
    return new Unfinished(
        account,
        account.body().killed().map(killed -> ChronoUnit.DAYS.between(killed, today)),
        balance.boning().or(balance::hot),
        Weighing.total(balance.outOfBoning()),
        account.decision().reasons().stream()
            .filter(reason -> reason.code() == ReasonCode.PART_CUT)
            .filter(reason -> reason.value(Reason.REST) != null)
            .map(reason -> reason.weight(Reason.REST))
            .findFirst(),
        balance.batches().stream()
            .filter(BatchBalance::isOpen)
            .flatMap(batch -> batch.batch().due().stream())
            .max(Comparator.naturalOrder()),
        hangs ? cutBy(account.body(), usual) : Optional.empty());
  }

  private static Optional<CutBy> cutBy(Body body, UsualDays usual) {
    return body.cutBy()
        .map(day -> new CutBy(day, Optional.empty()))
        .or(
            () ->
                body.killed()
                    .flatMap(
                        killed ->
                            usual
                                .of(body)
                                .map(days -> new CutBy(killed.plusDays(days), Optional.of(days)))));
  }

  /** Whether it is open and nothing of it is on the block yet: it hangs. */
  public boolean isHanging() {
    return account.decision().state() == State.OPEN && account.balance().cuts().isEmpty();
  }

  /** Whether it is open and on the block, or cut and not settled yet. */
  public boolean isBeingCut() {
    return account.decision().state() == State.OPEN && !isHanging();
  }
}
