package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Digest;
import gambrel.trade.register.FigureReader;
import gambrel.trade.register.Figures;
import gambrel.trade.register.IssuePlan;
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
import java.util.function.UnaryOperator;

/** Makes the statements and drafts of a night. */
final class Statements {
  private static final String KEPT = ".kept/";
  private static final int MARK = 16;

  private final Night night;
  private final Documents documents;
  private final RegisterStore store;
  private final StatementFiles names;
  private final PageCache shelf;
  private final Changes changes;
  private final List<Notice> notices;

  Statements(
      Night night,
      Documents documents,
      RegisterStore store,
      StatementFiles names,
      PageCache shelf,
      Changes changes,
      List<Notice> notices) {
    this.night = night;
    this.documents = documents;
    this.store = store;
    this.names = names;
    this.shelf = shelf;
    this.changes = changes;
    this.notices = notices;
  }

  /**
   * Makes what the plan issues; returns the register with it.
   *
   * @param done given 1 for each
   */
  Register issue(IssuePlan plan, Register register, LongConsumer done) throws IOException {
    var rows = new ArrayList<RegisterRow>();
    OrderedParallel.each(
        plan.issue(),
        this::statement,
        made -> {
          issue(made).ifPresent(rows::add);
          done.accept(1);
        });
    return register.with(rows);
  }

  /** A statement or draft as it was made. */
  private record Made(Planned planned, byte[] figures, Page page) {}

  private Made statement(Planned planned) throws IOException {
    var figures = figures(planned);
    var differences = differences(planned, figures);
    return made(planned, figures, bytes -> documents.statement(night, planned, differences, bytes));
  }

  private Figures figures(Planned planned) {
    return FigureReader.read(planned.account(), planned.customer(), night.shop().settings());
  }

  private static Made made(Planned planned, Figures read, UnaryOperator<byte[]> maker) {
    byte[] figures = RegisterStore.bytes(read);
    return new Made(planned, figures, Page.of(() -> maker.apply(figures)));
  }

  private Optional<RegisterRow> issue(Made made) throws IOException {
    var document = document(made);
    if (document.isEmpty()) {
      return Optional.empty();
    }
    String file = names.issued(made.planned());
    write(file, document.get());
    return Optional.of(row(made.planned(), file, document.get(), made.figures()));
  }

  /** The document; if there is none, adds a notice that says why. */
  private Optional<byte[]> document(Made made) {
    made.page()
        .notice("STATEMENT")
        .map(notice -> notice.with("customer", made.planned().customer()))
        .ifPresent(notice -> notices.add(notice.aboutBody(made.planned().body())));
    return made.page().bytes();
  }

  /** Without a register a name may be taken by a statement that once went out: that one is kept. */
  private void write(String file, byte[] document) throws IOException {
    var other = changes.read(file).filter(there -> !Arrays.equals(there, document));
    if (other.isPresent()) {
      String mark = Digest.of(other.get()).substring(0, MARK);
      changes.write(KEPT + file.replace(".pdf", "." + mark + ".pdf"), other.get());
    }
    changes.write(file, document);
  }

  private Optional<List<Figures.Change>> differences(Planned planned, Figures figures)
      throws IOException {
    if (planned.replaces().isEmpty()) {
      return Optional.of(List.of());
    }
    return store.figures(planned.replaces().get()).map(figures::changesSince);
  }

  private RegisterRow row(Planned planned, String file, byte[] document, byte[] figures) {
    String customer = planned.customer();
    var money = night.money(planned.account(), customer);
    return new RegisterRow(
        customer,
        planned.body(),
        planned.revision(),
        night.asOf().toLocalDateTime().withNano(0),
        planned.account().entitlements().get(customer).takeHome(),
        money.net(),
        money.tax(),
        money.paid(),
        planned.replaces().map(RegisterRow::revision),
        file,
        Digest.of(document),
        Digest.of(figures));
  }

  /**
   * Makes the drafts of what is held and drops those of what is held no more.
   *
   * @param done given 1 for each
   */
  void hold(IssuePlan plan, LongConsumer done) throws IOException {
    Set<String> kept = new HashSet<>();
    OrderedParallel.each(
        plan.held(),
        this::draft,
        made -> {
          hold(made).ifPresent(kept::add);
          done.accept(1);
        });
    for (String file : changes.list("held")) {
      if (StatementFiles.isDraft(file) && !kept.contains(file)) {
        changes.remove(file);
      }
    }
  }

  private Made draft(Planned planned) {
    return made(planned, figures(planned), bytes -> documents.draft(night, planned, bytes));
  }

  /** The file of the draft, if there is one. */
  private Optional<String> hold(Made made) throws IOException {
    var document = document(made);
    if (document.isEmpty()) {
      return Optional.empty();
    }
    String file = names.held(made.planned());
    shelf.write(file, document.get());
    return Optional.of(file);
  }
}
