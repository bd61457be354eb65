package gambrel.run;

import gambrel.data.NightTables;
import gambrel.data.NoticesTable;
import gambrel.data.RegisterTable;
import gambrel.data.Table;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.publish.Changes;
import gambrel.publish.Csv;
import gambrel.publish.Digest;
import gambrel.publish.OutputBusyException;
import gambrel.publish.OutputFolder;
import gambrel.reckoning.Night;
import gambrel.reckoning.Reckoner;
import gambrel.register.IssuePlan;
import gambrel.register.Register;
import gambrel.register.StatementFiles;
import gambrel.render.TemplateProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The nightly job: compute all, make all documents, publish once. */
public final class NightlyRun {
  private final Inputs inputs;
  private final Documents documents;

  /** A run over a shop folder that has been read. */
  public NightlyRun(Inputs inputs, Documents documents) {
    this.inputs = inputs;
    this.documents = documents;
  }

  /**
   * Runs and publishes into {@code root}.
   *
   * @param months the months to summarise; none means every month that has a body
   */
  public Outcome run(Path root, OffsetDateTime asOf, Collection<YearMonth> months) {
    try (var out = OutputFolder.open(root)) {
      var store = new RegisterStore(root, inputs.shop().settings());
      var known = store.load();
      var night = new Reckoner(inputs.shop(), inputs.exports()).at(asOf);
      var register = known.orElseGet(() -> new Register(List.of()));
      return new Done(night, out, store).publish(register, known.isEmpty(), months);
    } catch (OutputBusyException e) {
      return new Outcome.Busy();
    } catch (RefusedException e) {
      return new Outcome.Refused(e.getMessage());
    } catch (IOException e) {
      return new Outcome.Failed(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Computes what a run would find, and publishes nothing.
   *
   * @param root the output folder whose register counts
   */
  public Outcome check(Path root, OffsetDateTime asOf) {
    try {
      var known = new RegisterStore(root, inputs.shop().settings()).load();
      var night = new Reckoner(inputs.shop(), inputs.exports()).at(asOf);
      var plan = plan(night, known.orElseGet(() -> new Register(List.of())));
      var notices = NightNoticeList.of(inputs, night);
      notices.addAll(plan.notices());
      notices.sort(Notice.ORDER);
      return new Outcome.Done(
          new MorningReport(night, List.of(), plan.held(), notices, known.isEmpty()));
    } catch (RefusedException e) {
      return new Outcome.Refused(e.getMessage());
    } catch (IOException e) {
      return new Outcome.Failed(String.valueOf(e.getMessage()));
    }
  }

  private static IssuePlan plan(Night night, Register register) {
    return IssuePlan.of(night, register, f -> Digest.of(RegisterStore.bytes(f)));
  }

  /** One night that has been computed and is being published. */
  private final class Done {
    private final Night night;
    private final OutputFolder out;
    private final RegisterStore store;
    private final Changes changes = new Changes();
    private final List<Notice> notices;

    Done(Night night, OutputFolder out, RegisterStore store) {
      this.night = night;
      this.out = out;
      this.store = store;
      this.notices = new ArrayList<>(NightNoticeList.of(inputs, night));
    }

    Outcome publish(Register before, boolean isNew, Collection<YearMonth> months)
        throws IOException {
      var plan = plan(night, before);
      notices.addAll(plan.notices());
      var files = new StatementFiles(night.shop(), before);
      var statements = new Statements(night, documents, store, files, changes, notices);
      var register = statements.issue(plan, before);
      statements.hold(plan, out);
      for (var month : months.isEmpty() ? Months.of(night) : months) {
        document("summaries/" + month + ".pdf", () -> documents.summary(night, register, month));
      }
      var now = night.asOf().toLocalDateTime().withNano(0);
      boolean first = before.rows().stream().allMatch(row -> row.issued().equals(now));
      if (first) {
        notices.add(
            Notice.of(
                NoticeCode.REGISTER_NEW, Place.NONE, "There was no register before this night."));
      }
      notices.sort(Notice.ORDER);
      var report =
          new MorningReport(night, register.issuedAt(now), plan.held(), notices, first);
      document("morning.pdf", () -> documents.morning(report));
      notices.sort(Notice.ORDER);
      tables(register);
      out.publish(changes);
      return new Outcome.Done(
          new MorningReport(night, report.issued(), plan.held(), notices, first));
    }

    private void document(String path, java.util.function.Supplier<byte[]> maker)
        throws IOException {
      try {
        write(path, maker.get());
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
      tables.add(NoticesTable.of(notices));
      tables.add(RegisterTable.of(register, night.shop().settings()));
      for (var table : tables) {
        write("data/" + table.name(), Csv.bytes(table));
      }
    }

    private void write(String path, byte[] bytes) throws IOException {
      if (!out.holds(path, bytes)) {
        changes.write(path, bytes);
      }
    }
  }
}
