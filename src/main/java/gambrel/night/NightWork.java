package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Content;
import gambrel.files.tables.NightTables;
import gambrel.files.tables.RegisterTable;
import gambrel.files.tables.Table;
import gambrel.insight.cause.LikelyCauses;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Digest;
import gambrel.trade.register.IssuePlan;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.shop.Settings;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Makes everything that a night publishes. */
final class NightWork {
  private final Inputs inputs;
  private final Documents documents;
  private final Changes changes;
  private final Progress progress;
  private final Settings settings;
  private final PageCache cache;
  private final List<Notice> notices = new ArrayList<>();

  NightWork(Inputs inputs, Documents documents, Changes changes, Progress progress)
      throws IOException {
    this.inputs = inputs;
    this.cache = PageCache.of(changes);
    this.documents = documents.remembering(cache);
    this.changes = changes;
    this.progress = progress;
    this.settings = inputs.shop().settings();
  }

  /**
   * Makes the night in its order: register, figures, notices, statements and drafts, months,
   * morning sheet, data files. Returns what the morning sheet says.
   *
   * @param asked the months to summarise; none means every month that has a body
   * @throws RefusedException if the register cannot be read
   */
  MorningReport make(OffsetDateTime asOf, Collection<YearMonth> asked)
      throws IOException, RefusedException {
    var store = new RegisterStore(changes, settings);
    var before = store.load();
    var lost = OrderedParallel.begin(() -> store.lost(before));
    var night = new Reckoner(inputs.shop(), inputs.exports(), progress).at(asOf);
    progress.begin(Progress.Stage.CAUSES, 0);
    var causes = LikelyCauses.of(night, inputs.exports());
    notices.addAll(new NightNotices(inputs, night).all());
    notices.addAll(causes.notices());
    notices.addAll(OrderedParallel.result(lost));
    notices.addAll(LateWeighings.of(night, before));
    var plan = IssuePlan.of(night, before, f -> Digest.of(RegisterStore.bytes(f)));
    var allowed = NightNotices.stopsIssuing(inputs) ? plan.withoutIssues() : plan;
    notices.addAll(allowed.notices());
    var register =
        new Statements(night, documents, store, changes, cache, notices)
            .make(allowed, before, progress);
    var months = new Months(night, register, documents, asked);
    var monthTables = months.make(progress, cache, notices);
    if (asked.isEmpty()) {
      months.removeOthers(changes);
    }
    var report = morning(night, allowed.held(), causes, before, register);
    cache.writeList();
    var tables = new ArrayList<Table>(NightTables.of(night));
    tables.addAll(monthTables);
    tables.add(NightTables.notices(report.notices()));
    tables.add(RegisterTable.of(register, settings));
    write(tables);
    store.seal(register);
    return report;
  }

  /** Makes the morning sheet; returns what it says, and a notice if it could not be made. */
  private MorningReport morning(
      Night night, List<Planned> held, LikelyCauses causes, Register before, Register register)
      throws IOException {
    var now = night.asOf().toLocalDateTime().withNano(0);
    boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
    if (first) {
      notices.add(Notice.of(NoticeCode.REGISTER_NEW, Place.NONE));
    }
    notices.sort(Notice.ORDER);
    var issued = register.issuedAt(now);
    var report = new MorningReport(night, issued, held, notices, causes, first);
    Page.of(() -> documents.morning(report)).write("morning.pdf", cache, notices);
    notices.sort(Notice.ORDER);
    return new MorningReport(night, issued, held, notices, causes, first);
  }

  private void write(List<Table> tables) throws IOException {
    var made = progress.begin(Progress.Stage.TABLES, tables.size());
    for (var table : tables) {
      changes.write("data/" + table.name(), Content.of(table));
      made.accept(1);
    }
  }
}
