package gambrel.run;

import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Outcome;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.SortedSet;
import java.util.TreeSet;

/** The months that have a body: killed in it, or cut last in it. */
public final class Months {
  private Months() {}

  /** Every month from the first kill to the night's moment that has a body. */
  public static SortedSet<YearMonth> of(Night night) {
    var months = new TreeSet<YearMonth>();
    var now = YearMonth.from(night.asOf());
    for (var account : night.bodies().values()) {
      if (account.body().outcome() != Outcome.CANCELLED) {
        add(account, months);
      }
    }
    months.removeIf(month -> month.isAfter(now));
    return months;
  }

  private static void add(BodyAccount account, SortedSet<YearMonth> months) {
    account.body().killed().map(YearMonth::from).ifPresent(months::add);
    account
        .balance()
        .lastCut()
        .map(OffsetDateTime::toLocalDate)
        .map((LocalDate day) -> YearMonth.from(day))
        .ifPresent(months::add);
  }
}
