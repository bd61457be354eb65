package gambrel.run;

import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Outcome;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The months that have a body: killed in it, or cut last in it. */
public final class Months {
  /** Where summaries lie in the output folder. */
  static final String FOLDER = "summaries";

  private static final Pattern SUMMARY = Pattern.compile(FOLDER + "/\\d{4}-\\d{2}\\.pdf");

  private Months() {}

  /** The file of a month's summary. */
  static String file(YearMonth month) {
    return FOLDER + '/' + month + ".pdf";
  }

  /** Summaries among {@code files} of months that have no body any more. */
  static List<String> stale(List<String> files, Collection<YearMonth> months) {
    var wanted = months.stream().map(Months::file).toList();
    return files.stream()
        .filter(file -> SUMMARY.matcher(file).matches() && !wanted.contains(file))
        .toList();
  }

  /** Every month from the first kill to the night's moment that has a body. */
  public static NavigableSet<YearMonth> of(Night night) {
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

  private static void add(BodyAccount account, NavigableSet<YearMonth> months) {
    account.body().killed().map(YearMonth::from).ifPresent(months::add);
    account
        .balance()
        .lastCut()
        .map(OffsetDateTime::toLocalDate)
        .map((LocalDate day) -> YearMonth.from(day))
        .ifPresent(months::add);
  }
}
