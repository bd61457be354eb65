package gambrel.run;

import gambrel.data.MonthRows;
import gambrel.data.MonthTables;
import gambrel.data.Table;
import gambrel.month.BodyCalendar;
import gambrel.month.MonthRecords;
import gambrel.month.MonthReport;
import gambrel.reckoning.Night;
import gambrel.register.Register;
import gambrel.render.TemplateProblem;
import gambrel.weighing.Headway;
import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes the months of a night: of each its summary, where one is wanted, and its rows of the data
 * files, drawn from the same records. A month's records are let go before those of all are there.
 */
final class MonthWork {
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
  MonthWork(
      Night night, Register register, Documents documents, Collection<YearMonth> wanted) {
    this.night = night;
    this.register = register;
    this.documents = documents;
    this.calendar = new BodyCalendar(night);
    this.all = Months.of(night);
    this.wanted = wanted.isEmpty() ? all : new LinkedHashSet<>(wanted);
  }

  /**
   * A month as it was made.
   *
   * @param page its summary, where one is wanted and no template is in its way
   * @param rows its rows, where it has a body
   */
  record Made(
      YearMonth month,
      Optional<byte[]> page,
      Optional<TemplateProblem> problem,
      Optional<MonthRows> rows) {}

  /** Takes a summary, or why there is none, on the caller's thread. */
  interface Summaries {
    void page(String file, byte[] page) throws IOException;

    void problem(String file, TemplateProblem problem);
  }

  /**
   * Makes all months, and hands over the summaries in the order in which they are wanted.
   *
   * @param headway is told of the months
   */
  void make(Headway headway, Summaries summaries) throws IOException {
    var months = new LinkedHashSet<>(wanted);
    months.addAll(all);
    var done = headway.begin(months.size());
    SideBySide.each(
        List.copyOf(months),
        this::make,
        made -> {
          take(made, summaries);
          done.accept(1);
        });
  }

  private Made make(YearMonth month) {
    var report = MonthReport.of(MonthRecords.of(calendar, night, register, month));
    var page = Optional.<byte[]>empty();
    var problem = Optional.<TemplateProblem>empty();
    if (wanted.contains(month)) {
      try {
        page = Optional.of(documents.summary(report));
      } catch (TemplateProblem e) {
        problem = Optional.of(e);
      }
    }
    var rows = Optional.of(report).filter(r -> all.contains(month)).map(MonthRows::of);
    return new Made(month, page, problem, rows);
  }

  private void take(Made made, Summaries summaries) throws IOException {
    String file = Months.file(made.month());
    if (made.page().isPresent()) {
      summaries.page(file, made.page().get());
    }
    made.problem().ifPresent(problem -> summaries.problem(file, problem));
    made.rows().ifPresent(rows::add);
  }

  /** Summaries among {@code files} of months that have no body any more. */
  List<String> stale(List<String> files) {
    return Months.stale(files, wanted);
  }

  /** The months' data files, once all months are made. */
  List<Table> tables() {
    return MonthTables.of(rows);
  }
}
