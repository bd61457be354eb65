package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.tables.MonthRows;
import gambrel.files.tables.MonthTables;
import gambrel.files.tables.Table;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.BodyCalendar;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Outcome;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Makes the months of a night: of each its summary, where one is wanted, and its rows of the data
 * files, from the same records.
 */
public final class Months {
  /** Where summaries are in the output folder. */
  private static final String FOLDER = "summaries";

  private static final Pattern SUMMARY = Pattern.compile(FOLDER + "/\\d{4}-\\d{2}\\.pdf");

  private final Night night;
  private final Register register;
  private final Documents documents;
  private final BodyCalendar calendar;
  private final Set<YearMonth> all;
  private final Set<YearMonth> wanted;
  private final List<MonthRows> rows = new ArrayList<>();

  /**
   * The months of a night.
   *
   * @param register every statement, tonight's too
   * @param wanted the months to summarise; none means every month that has a body
   */
  Months(Night night, Register register, Documents documents, Collection<YearMonth> wanted) {
    this.night = night;
    this.register = register;
    this.documents = documents;
    this.calendar = new BodyCalendar(night);
    this.all = of(night);
    this.wanted = wanted.isEmpty() ? all : new LinkedHashSet<>(wanted);
  }

  /** Every month up to the night's moment in which a body was killed or cut last. */
  public static NavigableSet<YearMonth> of(Night night) {
    var months = new TreeSet<YearMonth>();
    night.bodies().values().stream()
        .filter(account -> account.body().outcome() != Outcome.CANCELLED)
        .flatMap(Months::of)
        .forEach(months::add);
    return months.headSet(YearMonth.from(night.asOf()), true);
  }

  /** The months in which a body was killed and cut last. */
  static Stream<YearMonth> of(BodyAccount account) {
    return Stream.concat(
        account.body().killed().map(YearMonth::from).stream(),
        account.balance().lastCut().map(OffsetDateTime::toLocalDate).map(YearMonth::from).stream());
  }

  /** A month as it was made; the page is there if it is wanted, the rows if it has a body. */
  private record Made(YearMonth month, Optional<Page> page, Optional<MonthRows> rows) {}

  /**
   * Makes all months, and writes the summaries in the order in which they are wanted.
   *
   * @param notices takes one for each summary that cannot be made
   */
  void make(Progress progress, PageCache shelf, List<Notice> notices) throws IOException {
    var months = new LinkedHashSet<>(wanted);
    months.addAll(all);
    var done = progress.begin(Progress.Stage.MONTHS, months.size());
    OrderedParallel.each(
        List.copyOf(months),
        this::make,
        made -> {
          if (made.page().isPresent()) {
            NightWork.place(file(made.month()), made.page().get(), shelf, notices);
          }
          made.rows().ifPresent(rows::add);
          done.accept(1);
        });
  }

  private Made make(YearMonth month) {
    var report = MonthReport.of(MonthRecords.of(calendar, night, register, month));
    return new Made(
        month,
        Optional.of(report)
            .filter(r -> wanted.contains(month))
            .map(r -> Page.of(() -> documents.summary(r))),
        Optional.of(report).filter(r -> all.contains(month)).map(MonthRows::of));
  }

  private static String file(YearMonth month) {
    return FOLDER + '/' + month + ".pdf";
  }

  /** Removes the summaries of months that have no body. */
  void removeOthers(Changes changes) throws IOException {
    var kept = wanted.stream().map(Months::file).toList();
    changes.list(FOLDER).stream()
        .filter(file -> SUMMARY.matcher(file).matches() && !kept.contains(file))
        .forEach(changes::remove);
  }

  /** The months' data files, once all months are made. */
  List<Table> tables() {
    return MonthTables.of(rows);
  }
}
