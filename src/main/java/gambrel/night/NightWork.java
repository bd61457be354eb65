package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Content;
import gambrel.files.tables.NightTables;
import gambrel.files.tables.NoticesTable;
import gambrel.files.tables.RegisterTable;
import gambrel.files.tables.Table;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Digest;
import gambrel.trade.register.IssuePlan;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.register.StatementFiles;
import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Makes everything that a night publishes: documents, then data files, then the register. */
final class NightWork {
  private final Night night;
  private final Documents documents;
  private final PageCache shelf;
  private final Changes changes;
  private final RegisterStore store;
  private final Progress progress;
  private final List<Notice> notices = new ArrayList<>();

  NightWork(
      Night night,
      Documents documents,
      PageCache shelf,
      Changes changes,
      RegisterStore store,
      Progress progress) {
    this.night = night;
    this.documents = documents.remembering(shelf);
    this.shelf = shelf;
    this.changes = changes;
    this.store = store;
    this.progress = progress;
  }

  /**
   * Makes it all; returns what the morning sheet says.
   *
   * @param known what is to be said of the shop folder and its figures
   * @param before the register as it was
   * @param lost what is missing of the documents that it names
   * @param months the months to summarise; none means every month that has a body
   */
  MorningReport make(
      NightNoticeList known, Register before, List<Notice> lost, Collection<YearMonth> months)
      throws IOException {
    notices.addAll(known.all());
    notices.addAll(lost);
    notices.addAll(LateWeighings.of(night, before));
    var plan = plan(known, before);
    var names = new StatementFiles(night.shop(), before);
    var statements = new Statements(night, documents, store, names, shelf, changes, notices);
    var made = progress.begin(Progress.Stage.STATEMENTS, plan.issue().size() + plan.held().size());
    var register = statements.issue(plan, before, made);
    statements.hold(plan, made);
    var work = new Months(night, register, documents, months);
    work.make(progress, shelf, notices);
    if (months.isEmpty()) {
      work.removeOthers(changes);
    }
    var report = morning(plan, before, register, known);
    shelf.writeList();
    tables(register, work);
    return report;
  }

  private IssuePlan plan(NightNoticeList known, Register before) {
    var plan = IssuePlan.of(night, before, f -> Digest.of(RegisterStore.bytes(f)));
    var allowed = known.stopsIssuing() ? plan.withoutIssues() : plan;
    notices.addAll(allowed.notices());
    return allowed;
  }

  private MorningReport morning(
      IssuePlan plan, Register before, Register register, NightNoticeList known)
      throws IOException {
    var now = night.asOf().toLocalDateTime().withNano(0);
    boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
    if (first) {
      notices.add(Notice.of(NoticeCode.REGISTER_NEW, Place.NONE));
    }
    var issued = register.issuedAt(now);
    var report = report(issued, plan, known, first);
    var page = Page.of(() -> documents.morning(report));
    place("morning.pdf", page, shelf, notices);
    return page.bytes().isPresent() ? report : report(issued, plan, known, first);
  }

  private MorningReport report(
      List<RegisterRow> issued, IssuePlan plan, NightNoticeList known, boolean first) {
    notices.sort(Notice.ORDER);
    return new MorningReport(night, issued, plan.held(), notices, known.causes(), first);
  }

  /** Writes a page; if there is none, adds a notice that says why. */
  static void place(String path, Page page, PageCache shelf, List<Notice> notices)
      throws IOException {
    if (page.bytes().isPresent()) {
      shelf.write(path, page.bytes().get());
    }
    page.notice("PAGE").ifPresent(notice -> notices.add(notice.with("page", path)));
  }

  private void tables(Register register, Months months) throws IOException {
    var tables = new ArrayList<Table>(NightTables.of(night));
    tables.addAll(months.tables());
    tables.add(NoticesTable.of(notices));
    tables.add(RegisterTable.of(register, night.shop().settings()));
    var made = progress.begin(Progress.Stage.TABLES, tables.size());
    for (var table : tables) {
      changes.write("data/" + table.name(), Content.of(table));
      made.accept(1);
    }
  }
}
