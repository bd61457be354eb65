package gambrel.run;

import gambrel.cause.LikelyCauses;
import gambrel.data.MonthTables;
import gambrel.data.NightTables;
import gambrel.data.NoticesTable;
import gambrel.data.RegisterTable;
import gambrel.data.Table;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.publish.Changes;
import gambrel.publish.Content;
import gambrel.publish.PublishedFiles;
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
  private final PublishedFiles published;
  private final RegisterStore store;
  private final PageShelf shelf;
  private final Changes changes;
  private final List<Notice> notices = new ArrayList<>();
  private LikelyCauses causes = LikelyCauses.NONE;
  private MorningReport report;

  NightWork(
      Night night,
      Documents documents,
      PublishedFiles published,
      RegisterStore store,
      PageShelf shelf,
      Changes changes) {
    this.shelf = shelf;
    this.changes = changes;
    this.night = night;
    this.documents = documents;
    this.published = published;
    this.store = store;
  }

  /** What a person should know. */
  MorningReport report() {
    return report;
  }

  void make(NightNoticeList known, Register before, Collection<YearMonth> months)
      throws IOException {
    causes = known.causes();
    notices.addAll(known.all());
    notices.addAll(store.lost(before));
    notices.addAll(LateWeighings.of(night, before));
    var plan = plan(known, before);
    var files = new StatementFiles(night.shop(), before);
    var statements =
        new Statements(night, documents, store, files, published, changes, shelf, notices);
    var register = statements.issue(plan, before);
    statements.hold(plan);
    summaries(register, months);
    morning(plan, before, register);
    write(PageShelf.FILE, shelf.after(changes));
    tables(register);
  }

  private IssuePlan plan(NightNoticeList known, Register before) {
    var plan = IssuePlan.of(night, before, f -> Digest.of(RegisterStore.bytes(f)));
    var allowed = known.stopsIssuing() ? plan.withoutIssues() : plan;
    notices.addAll(allowed.notices());
    return allowed;
  }

  private void summaries(Register register, Collection<YearMonth> months) throws IOException {
    var wanted = months.isEmpty() ? Months.of(night) : months;
    for (var month : wanted) {
      document(Months.file(month), () -> documents.summary(night, register, month));
    }
    if (months.isEmpty()) {
      for (String file : Months.stale(published.list(Months.FOLDER), wanted)) {
        changes.remove(file);
      }
    }
  }

  private void morning(IssuePlan plan, Register before, Register register) throws IOException {
    var now = night.asOf().toLocalDateTime().withNano(0);
    boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
    if (first) {
      notices.add(
          Notice.of(
              NoticeCode.REGISTER_NEW,
              Place.NONE,
              "There is no register of statements from before this night: revisions start at 1."));
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
      byte[] page = maker.get();
      shelf.place(path, page);
      write(path, page);
    } catch (TemplateProblem problem) {
      notices.add(
          Notice.of(
              NoticeCode.TEMPLATE_BAD,
              Place.NONE,
              path + " was not made: " + problem.getMessage() + "."));
    }
  }

  private void tables(Register register) throws IOException {
    var tables = new ArrayList<Table>(NightTables.of(night));
    tables.addAll(MonthTables.of(night, register, Months.of(night)));
    tables.add(NoticesTable.of(notices));
    tables.add(RegisterTable.of(register, night.shop().settings()));
    for (var table : tables) {
      write("data/" + table.name(), Content.of(table));
    }
  }

  private void write(String path, byte[] bytes) throws IOException {
    if (!published.holds(path, bytes)) {
      changes.write(path, bytes);
    }
  }

  private void write(String path, Content content) throws IOException {
    if (!published.holds(path, content)) {
      changes.write(path, content);
    }
  }
}
