package gambrel.run;

import gambrel.cause.LikelyCauses;
import gambrel.data.NightTables;
import gambrel.data.NoticesTable;
import gambrel.data.RegisterTable;
import gambrel.data.Table;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.publish.Changes;
import gambrel.publish.Content;
import gambrel.reckoning.Night;
import gambrel.register.Digest;
import gambrel.register.IssuePlan;
import gambrel.register.MorningReport;
import gambrel.register.Register;
import gambrel.register.RegisterRow;
import gambrel.register.StatementFiles;
import gambrel.render.TemplateProblem;
import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;

/** Makes everything that a night publishes: documents, then data files, then the register. */
final class NightWork {
  private final Night night;
  private final Documents documents;
  private final NightFiles files;
  private final RegisterStore store;
  private final Progress progress;
  private final List<Notice> notices = new ArrayList<>();
  private LikelyCauses causes = LikelyCauses.NONE;
  private MorningReport report;

  NightWork(
      Night night, Documents documents, NightFiles files, RegisterStore store, Progress progress) {
    this.night = night;
    this.documents = documents;
    this.files = files;
    this.store = store;
    this.progress = progress;
  }

  /** What a person should know. */
  MorningReport report() {
    return report;
  }

  /**
   * Makes it all.
   *
   * @param before the register as it was
   * @param lost what is missing of the documents that it names
   * @param months the months to summarise; none means every month that has a body
   */
  void make(
      NightNoticeList known,
      Register before,
      List<Notice> lost,
      Collection<YearMonth> months)
      throws IOException {
    causes = known.causes();
    notices.addAll(known.all());
    notices.addAll(lost);
    notices.addAll(LateWeighings.of(night, before));
    var plan = plan(known, before);
    var names = new StatementFiles(night.shop(), before);
    var statements = new Statements(night, documents, store, names, files, notices);
    var made = progress.begin(Stage.STATEMENTS, plan.issue().size() + plan.held().size());
    var register = statements.issue(plan, before, made);
    statements.hold(plan, made);
    var work = new MonthWork(night, register, documents, months);
    summaries(work, months.isEmpty());
    morning(plan, before, register);
    files.pages();
    tables(register, work);
  }

  private IssuePlan plan(NightNoticeList known, Register before) {
    var plan = IssuePlan.of(night, before, f -> Digest.of(RegisterStore.bytes(f)));
    var allowed = known.stopsIssuing() ? plan.withoutIssues() : plan;
    notices.addAll(allowed.notices());
    return allowed;
  }

  private void summaries(MonthWork work, boolean ofAll) throws IOException {
    work.make(
        progress.of(Stage.MONTHS),
        new MonthWork.Summaries() {
          @Override
          public void page(String file, byte[] page) throws IOException {
            files.page(file, page);
          }

          @Override
          public void problem(String file, TemplateProblem problem) {
            notMade(file, problem);
          }
        });
    if (ofAll) {
      work.stale(files.list(Months.FOLDER)).forEach(files::remove);
    }
  }

  private void morning(IssuePlan plan, Register before, Register register) throws IOException {
    var now = night.asOf().toLocalDateTime().withNano(0);
    boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
    if (first) {
      notices.add(Notice.of(NoticeCode.REGISTER_NEW, Place.NONE));
    }
    document("morning.pdf", () -> documents.morning(report(plan, register.issuedAt(now), first)));
    report = report(plan, register.issuedAt(now), first);
  }

  private MorningReport report(
      IssuePlan plan, List<RegisterRow> issued, boolean first) {
    notices.sort(Notice.ORDER);
    return new MorningReport(night, issued, plan.held(), notices, causes, first);
  }

  private void document(String path, Supplier<byte[]> maker) throws IOException {
    try {
      files.page(path, maker.get());
    } catch (TemplateProblem problem) {
      notMade(path, problem);
    }
  }

  private void notMade(String path, TemplateProblem problem) {
    notices.add(Statements.notMade(problem, "PAGE").with("page", path));
  }

  private void tables(Register register, MonthWork months) throws IOException {
    var tables = new ArrayList<Table>(NightTables.of(night));
    tables.addAll(months.tables());
    tables.add(NoticesTable.of(notices));
    tables.add(RegisterTable.of(register, night.shop().settings()));
    var made = progress.begin(Stage.TABLES, tables.size());
    for (var table : tables) {
      files.write("data/" + table.name(), Content.of(table));
      made.accept(1);
    }
  }
}
