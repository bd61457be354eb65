package gambrel.night;

import gambrel.files.csv.OrderedParallel;
import gambrel.files.publish.Changes;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Accounts;
import gambrel.trade.register.ChargeLine;
import gambrel.trade.register.Digest;
import gambrel.trade.register.Figures;
import gambrel.trade.register.IssuePlanner;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.register.StatementFiles;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;

/**
 * Makes the statements and drafts of a night.
 *
 * @param notices takes one for each statement that cannot be made
 */
record Statements(
    Night night,
    Documents documents,
    RegisterStore store,
    Changes changes,
    PageCache cache,
    List<Notice> notices) {
  private static final String KEPT_FOLDER = ".kept/";
  private static final int MARK_LENGTH = 16;

  /**
   * Makes the statements that a plan issues and the drafts of those that it holds, and removes all
   * other drafts. Returns the register with the new statements.
   */
  Register make(IssuePlanner.Plan plan, Register before, Progress progress) throws IOException {
    var names = new StatementFiles(night.shop(), before);
    var done = progress.begin(Progress.Stage.STATEMENTS, plan.issue().size() + plan.held().size());
    int number = before.nextNumber(night.shop().settings().terms().numberFrom());
    var rows = new ArrayList<RegisterRow>();
    var accounts = Accounts.of(night, before, plan.issue());
    var all = plan.issue().stream().map(one -> one.owing(accounts.get(one.customer()))).toList();
    for (var left = all; !left.isEmpty(); ) {
      left = issue(left, number + rows.size(), names, done, rows);
    }
    Set<String> drafts = new HashSet<>();
    each(
        plan.held(),
        this::draft,
        done,
        made -> {
          done.accept(1);
          String file = names.held(made.planned());
          cache.write(file, made.document());
          drafts.add(file);
        });
    for (String file : changes.list("held")) {
      if (StatementFiles.isDraft(file) && !drafts.contains(file)) {
        changes.remove(file);
      }
    }
    return before.with(rows);
  }

  /**
   * Issues statements with consecutive numbers and adds their rows. After a statement that cannot
   * be made no number may be left out: those that follow it are not issued, but returned to be made
   * with other numbers.
   */
  private List<Planned> issue(
      List<Planned> some,
      int number,
      StatementFiles names,
      LongConsumer done,
      List<RegisterRow> rows)
      throws IOException {
    var numbered = new ArrayList<Planned>();
    some.forEach(planned -> numbered.add(planned.numbered(number + numbered.size())));
    var left = new ArrayList<Planned>();
    int before = rows.size();
    each(
        numbered,
        this::statement,
        done,
        made -> {
          if (made.number() == number + rows.size() - before) {
            rows.add(issue(made, names));
            done.accept(1);
          } else {
            left.add(made.planned());
          }
        });
    return left;
  }

  /** A statement or draft as it was made, with the figures attached to it. */
  private record Made(Planned planned, byte[] figures, Page page) {
    /** The document, which must be there. */
    byte[] document() {
      return page.bytes().orElseThrow();
    }

    /** The number of a statement. */
    int number() {
      return planned.number().orElseThrow();
    }
  }

  /**
   * Makes documents and hands over each that can be made; the others have a notice and are done.
   */
  private void each(
      List<Planned> all,
      OrderedParallel.Work<Planned, Made> work,
      LongConsumer done,
      OrderedParallel.Handover<Made> handover)
      throws IOException {
    OrderedParallel.each(
        all,
        work,
        made -> {
          made.page()
              .notice("STATEMENT")
              .map(notice -> notice.with("customer", made.planned().customer()))
              .ifPresent(notice -> notices.add(notice.aboutBody(made.planned().body())));
          if (made.page().bytes().isPresent()) {
            handover.take(made);
          } else {
            done.accept(1);
          }
        });
  }

  private Made statement(Planned planned) throws IOException {
    var figures = RegisterStore.read(planned, night);
    byte[] bytes = RegisterStore.bytes(figures);
    var replaced = planned.replaces();
    var differences =
        replaced.isEmpty()
            ? Optional.of(List.<Figures.Change>of())
            : store
                .figures(replaced.get().file(), replaced.get().sha256())
                .map(figures::changesSince);
    var page = Page.of(() -> documents.statement(night, planned, differences, bytes));
    return new Made(planned, bytes, page);
  }

  private Made draft(Planned planned) {
    byte[] figures = RegisterStore.bytes(RegisterStore.read(planned, night));
    return new Made(planned, figures, Page.of(() -> documents.draft(night, planned, figures)));
  }

  /** Writes a statement; returns its row of the register. */
  private RegisterRow issue(Made made, StatementFiles names) throws IOException {
    var planned = made.planned();
    String file = names.issued(planned);
    String digest = Digest.of(made.document());
    write(file, made.document(), digest);
    var account = planned.account();
    var money = night.money(account, planned.customer());
    return new RegisterRow(
        planned.customer(),
        planned.body(),
        planned.revision(),
        night.issueTime(),
        account.entitlements().get(planned.customer()).takeHome(),
        money.net(),
        money.tax(),
        money.paid(),
        planned.replaces().map(RegisterRow::revision),
        file,
        digest,
        Digest.of(made.figures()),
        planned.number(),
        ChargeLine.of(account.bill(), planned.customer(), night.shop().settings().unit()));
  }

  /** If the register was lost, the name may be that of an issued statement, which is kept. */
  private void write(String file, byte[] document, String digest) throws IOException {
    var other = changes.read(file).filter(there -> !Arrays.equals(there, document));
    if (other.isPresent()) {
      String mark = Digest.of(other.get()).substring(0, MARK_LENGTH);
      changes.write(KEPT_FOLDER + file.replace(".pdf", "." + mark + ".pdf"), other.get());
    }
    cache.write(file, document, digest);
  }
}
