package gambrel.night;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.publish.Changes;
import gambrel.files.publish.Csv;
import gambrel.files.publish.Disk;
import gambrel.files.publish.OutputFolder;
import gambrel.files.tables.NightTables;
import gambrel.files.tables.OpenTables;
import gambrel.files.tables.Table;
import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.statistics.ShrinkSeries;
import gambrel.insight.usual.LikeBodies;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Accounts;
import gambrel.trade.register.Digest;
import gambrel.trade.register.Figures;
import gambrel.trade.register.IssuePlanner;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The nightly job: makes a night and publishes it at once.
 *
 * @param inputs the shop folder as read
 * @param documents makes the pages
 * @param disk where the night is published
 * @param progress receives the stages of the run
 */
public record NightlyRun(Inputs inputs, Documents documents, Disk disk, Progress progress) {
  /** A run over a shop folder that has been read. */
  public NightlyRun(Inputs inputs, Documents documents) {
    this(inputs, documents, Disk.SYSTEM, Progress.NONE);
  }

  /**
   * Runs and publishes into {@code root}.
   *
   * @param months the months to summarise; none means every month that has a body
   */
  public NightOutcome run(Path root, OffsetDateTime asOf, Collection<YearMonth> months) {
    return NightOutcome.of(
        root,
        () -> {
          try (var out = OutputFolder.open(root, disk)) {
            var changes = out.changes();
            var report = make(changes, asOf, months);
            var visible = progress.begin(Progress.Stage.PUBLISHING, changes.count());
            out.publish(changes, () -> visible.accept(1));
            return new NightOutcome.Done(report);
          }
        });
  }

  /**
   * Makes a night without publishing it or laying out its pages.
   *
   * @param root the output folder with the register
   */
  public NightOutcome check(Path root, OffsetDateTime asOf) {
    var unprinted = new NightlyRun(inputs, documents.fillingOnly(), disk, progress);
    return NightOutcome.of(
        root,
        () -> new NightOutcome.Done(unprinted.make(Changes.unwritten(root), asOf, List.of())));
  }

  /**
   * The night as it would be made, without its documents.
   *
   * @param root the output folder with the register
   * @throws RefusedException if the register cannot be read
   */
  public Night night(Path root, OffsetDateTime asOf) throws RefusedException, IOException {
    var changes = Changes.unwritten(root);
    return night(
        inputs, new RegisterStore(changes, inputs.shop().settings()).load(), asOf, progress);
  }

  /** The night at {@code asOf}, given the statements issued before. */
  static Night night(Inputs inputs, Register before, OffsetDateTime asOf, Progress progress) {
    var reckoned = new Reckoner(inputs.shop(), inputs.exports(), progress).at(asOf);
    return new IssuePlanner(reckoned, before, NightlyRun::digest).holdingWhatGoesOut();
  }

  private static String digest(Figures figures) {
    return Digest.of(RegisterStore.bytes(figures));
  }

  /**
   * Writes the statement of a customer's body, to look at the templates.
   *
   * @param body the body's id; if empty, the one that was cut last
   * @throws RefusedException if no such body of a customer was cut, or a template cannot be used
   */
  public void preview(Path file, Night night, Optional<String> body)
      throws RefusedException, IOException {
    var account =
        night.bodies().values().stream()
            .filter(a -> !a.customers().isEmpty() && a.balance().lastCut().isPresent())
            .filter(a -> body.isEmpty() || a.body().id().equals(body.get()))
            .max(
                Comparator.comparing(
                    a -> a.balance().lastCut().orElseThrow(), OffsetDateTime.timeLineOrder()))
            .orElseThrow(
                () ->
                    new RefusedException(
                        body.map(id -> "no body " + id + " of a customer")
                                .orElse("no customer's body")
                            + " has been cut yet, so there is no preview"));
    var planned = new Planned(account.customers().get(0), account, Optional.empty(), false);
    var unchanged = Optional.of(List.<Figures.Change>of());
    try {
      byte[] figures = RegisterStore.bytes(RegisterStore.read(planned, night));
      var comparing = documents.comparing(LikeBodies.of(night));
      Files.write(file, comparing.statement(night, planned, unchanged, figures));
    } catch (TemplateProblem problem) {
      throw new RefusedException(NoticeWords.ENGLISH.of(Page.phrase(problem)));
    }
  }

  /**
   * Makes a night in its order: register, figures, notices, statements and drafts, months, morning
   * sheet, data files. Returns what the morning sheet says.
   *
   * @param asked the months to summarise; none means every month that has a body
   * @throws RefusedException if the register cannot be read
   */
  private MorningReport make(Changes changes, OffsetDateTime asOf, Collection<YearMonth> asked)
      throws IOException, RefusedException {
    var settings = inputs.shop().settings();
    var cache = PageCache.of(changes);
    var store = new RegisterStore(changes, settings);
    var before = store.load();
    var lost = OrderedParallel.begin(() -> store.lost(before, cache));
    var remembering = OrderedParallel.begin(() -> documents.remembering(cache));
    var night = night(inputs, before, asOf, progress);
    var looking = OrderedParallel.begin(() -> LikelyCauses.of(night, inputs.exports()));
    var bodies = MonthBody.all(night);
    var like = new LikeBodies(settings, bodies);
    var pages = OrderedParallel.result(remembering).comparing(like);
    var notices = new ArrayList<>(new NightNotices(inputs, night).all(before));
    notices.addAll(ShrinkSeries.unusual(night));
    notices.addAll(OrderedParallel.result(lost));
    var plan = new IssuePlanner(night, before, NightlyRun::digest).plan();
    var allowed = NightNotices.stopsIssuing(inputs) ? plan.withoutIssues() : plan;
    notices.addAll(allowed.notices());
    var now = night.issueTime();
    var statements = new Statements(night, pages, store, changes, cache, notices);
    var register = statements.make(allowed, before, progress);
    new ToPrint(night, pages, changes, cache).write(register.issuedAt(now), notices);
    notices.addAll(MailRun.notices(inputs, night, register, changes));
    var accounts = Accounts.of(night, register);
    var months = new Months(night, bodies, register, accounts, pages, asked);
    var tables = new ArrayList<>(NightTables.of(night));
    tables.addAll(months.make(progress, cache, notices));
    if (asked.isEmpty()) {
      months.removeOthers(changes);
    }
    var causes = OrderedParallel.result(looking);
    notices.addAll(causes.notices());
    boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
    if (first) {
      notices.add(Notice.of(NoticeCode.REGISTER_NEW, Place.NONE));
    }
    Supplier<MorningReport> morning =
        () -> {
          notices.sort(Notice.ORDER);
          var issued = register.issuedAt(now);
          return new MorningReport(night, issued, accounts, allowed.held(), notices, causes, first);
        };
    var printed = morning.get();
    Page.of(() -> pages.morning(printed)).write("morning.pdf", cache, notices);
    // What the sheet cannot say is that it could not be made.
    var report = morning.get();
    cache.writeList();
    tables.add(NightTables.notices(report.notices()));
    tables.addAll(OpenTables.of(night, accounts, causes));
    tables.addAll(store.tables(register));
    write(tables, changes);
    store.seal(register);
    return report;
  }

  private void write(List<Table> tables, Changes changes) throws IOException {
    var done = progress.begin(Progress.Stage.TABLES, tables.size());
    OrderedParallel.each(
        tables,
        table -> Map.entry("data/" + table.name(), Csv.bytes(table)),
        file -> {
          changes.write(file.getKey(), file.getValue());
          done.accept(1);
        });
  }
}
