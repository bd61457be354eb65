package gambrel.night;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.publish.Changes;
import gambrel.files.tables.MonthRows;
import gambrel.files.tables.Table;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Body.Outcome;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the months of a night: summaries and rows of the data files, from the same reports. */
public final class Months {
  private static final String FOLDER = "summaries";
  private static final Pattern SUMMARY = Pattern.compile(FOLDER + "/\\d{4}-\\d{2}\\.pdf");

  private final Night night;
  private final Register register;
  private final List<CustomerAccount> accounts;
  private final Documents documents;
  private final List<MonthBody> bodies;
  private final Set<YearMonth> all;
  private final Set<YearMonth> wanted;

  /**
   * The months of a night.
   *
   * @param bodies the night's bodies, as {@link MonthBody#all} reads them
   * @param register every statement, tonight's too
   * @param accounts the customers' accounts with these statements
   * @param wanted the months to summarise; none means every month that has a body
   */
  Months(
      Night night,
      List<MonthBody> bodies,
      Register register,
      List<CustomerAccount> accounts,
      Documents documents,
      Collection<YearMonth> wanted) {
    this.night = night;
    this.register = register;
    this.accounts = accounts;
    this.documents = documents;
    this.bodies = bodies;
    this.all = of(night);
    this.wanted = wanted.isEmpty() ? all : Set.copyOf(wanted);
  }

  /** Every month in which a body was killed or cut last by the night's moment. */
  public static Set<YearMonth> of(Night night) {
    return night.bodies().values().stream()
        .filter(account -> account.body().outcome() != Outcome.CANCELLED)
        .flatMap(Months::days)
        .filter(day -> !day.isAfter(night.asOf().toLocalDate()))
        .map(YearMonth::from)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The months in which a body was killed and cut last. */
  static Stream<YearMonth> of(BodyAccount account) {
    return days(account).map(YearMonth::from);
  }

  private static Stream<LocalDate> days(BodyAccount account) {
    return Stream.concat(
        account.body().killed().stream(),
        account.balance().lastCut().map(OffsetDateTime::toLocalDate).stream());
  }

  /** A month as it was made, with a page if it is wanted, and rows if it has a body. */
  private record Made(YearMonth month, Optional<Page> page, Optional<MonthRows> rows) {}

  /**
   * Makes all months and writes the summaries. The latest months come first: theirs are the pages
   * that are likely to be new, and take long. Returns the months' data files.
   *
   * @param notices takes one for each summary that cannot be made
   */
  List<Table> make(Progress progress, PageCache cache, List<Notice> notices) throws IOException {
    var months = new TreeSet<>(Comparator.<YearMonth>reverseOrder());
    months.addAll(wanted);
    months.addAll(all);
    var done = progress.begin(Progress.Stage.MONTHS, months.size());
    var rows = new ArrayList<MonthRows>();
    OrderedParallel.each(
        List.copyOf(months),
        this::make,
        made -> {
          if (made.page().isPresent()) {
            made.page().get().write(file(made.month()), cache, notices);
          }
          made.rows().ifPresent(rows::add);
          done.accept(1);
        });
    Collections.reverse(rows);
    return MonthRows.tables(rows);
  }

  private Made make(YearMonth month) {
    var report = MonthReport.of(MonthRecords.of(bodies, night, register, accounts, month));
    return new Made(
        month,
        wanted.contains(month)
            ? Optional.of(Page.of(() -> documents.summary(report)))
            : Optional.empty(),
        all.contains(month)
            ? Optional.of(MonthRows.of(report, findingsOnFirstPage(report)))
            : Optional.empty());
  }

  /** None if the words of the page cannot be used. */
  private int findingsOnFirstPage(MonthReport report) {
    try {
      return documents.findingsOnFirstPage(report);
    } catch (TemplateProblem problem) {
      return 0;
    }
  }

  private static String file(YearMonth month) {
    return FOLDER + '/' + month + ".pdf";
  }

  /** Removes the summaries of months that have no body. */
  void removeOthers(Changes changes) throws IOException {
    var kept = wanted.stream().map(Months::file).collect(Collectors.toSet());
    changes.list(FOLDER).stream()
        .filter(file -> SUMMARY.matcher(file).matches() && !kept.contains(file))
        .forEach(changes::remove);
  }
}
