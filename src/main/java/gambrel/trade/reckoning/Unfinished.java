package gambrel.trade.reckoning;

import gambrel.trade.balance.BatchBalance;
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
 * @param due the latest day on which one of its open batches is due; empty if none has a day
 */
public record Unfinished(
    BodyAccount account,
    Optional<Long> days,
    Optional<Weight> standing,
    Weight cut,
    Optional<LocalDate> due) {

  /** The bodies of a night that are open or held and were killed or weighed, by id. */
  public static List<Unfinished> of(Night night) {
    var today = night.asOf().toLocalDate();
    return night.bodies().values().stream()
        .filter(a -> a.decision().state() == State.OPEN || a.decision().state() == State.HELD)
        .filter(account -> isKilled(account.body(), today) || isWeighed(account))
        .map(account -> of(account, today))
        .toList();
  }

  private static boolean isKilled(Body body, LocalDate today) {
    return body.killed().filter(day -> !day.isAfter(today)).isPresent();
  }

  private static boolean isWeighed(BodyAccount account) {
    return !account.balance().weighings().all().isEmpty();
  }

  private static Unfinished of(BodyAccount account, LocalDate today) {
    var balance = account.balance();
    return new Unfinished(
        account,
        account.body().killed().map(killed -> ChronoUnit.DAYS.between(killed, today)),
        balance.boning().or(balance::hot),
        Weighing.total(balance.outOfBoning()),
        balance.batches().stream()
            .filter(BatchBalance::isOpen)
            .flatMap(batch -> batch.batch().due().stream())
            .max(Comparator.naturalOrder()));
  }
}
