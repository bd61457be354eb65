package gambrel.trade.reckoning;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Body;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** How many days the shop lets bodies hang, read from the bodies that it cut last. */
final class UsualDays {
  private static final int MOST = 20;
  private static final int FEWEST = 5;

  private final List<BodyBalance> latest;

  /** The days of {@code accounts}; only bodies that are cut and settled count. */
  UsualDays(Collection<BodyAccount> accounts) {
    latest =
        accounts.stream()
            .filter(account -> account.decision().state().isSettled() && account.body().isCut())
            .map(BodyAccount::balance)
            .filter(balance -> balance.daysHung().isPresent())
            .sorted(BodyBalance.LATEST_CUT_FIRST)
            .toList();
  }

  /**
   * The median of the days hung by the last 20 bodies of the same species and class or, with fewer
   * than 5 of these, of the same species; of an even number the lower of the middle two. Empty with
   * fewer than 5 of the species.
   */
  Optional<Integer> of(Body body) {
    Predicate<Body> species = other -> other.species() == body.species();
    return median(species.and(other -> other.category().equalsIgnoreCase(body.category())))
        .or(() -> median(species));
  }

  private Optional<Integer> median(Predicate<Body> alike) {
    var days =
        latest.stream()
            .filter(balance -> alike.test(balance.body()))
            .limit(MOST)
            .map(balance -> balance.daysHung().orElseThrow())
            .sorted()
            .toList();
    return days.size() < FEWEST ? Optional.empty() : Optional.of(days.get((days.size() - 1) / 2));
  }
}
