package gambrel.laws;

import gambrel.insight.month.MonthReport;
import gambrel.night.Documents;
import gambrel.night.PlainDocuments;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.statement.StatementComposer;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.WordFiles;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import gambrel.trade.shop.Settings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Keeps what the statements and drafts of nights print, and makes them as one line of text. */
final class ViewDocuments implements Documents {
  /** A statement or draft and what it prints. */
  record Made(Planned planned, StatementView view) {}

  private final ConcurrentLinkedQueue<Made> made = new ConcurrentLinkedQueue<>();
  private final PlainDocuments plain = new PlainDocuments();
  private final Wording wording;

  ViewDocuments(Settings settings) {
    wording = new WordFiles(ViewDocuments::file, ViewDocuments::file, settings).of("");
  }

  private static Optional<String> file(String name) {
    var file = Path.of("templates", name);
    try {
      return Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What was made so far. */
  List<Made> made() {
    return List.copyOf(made);
  }

  /** The words in which they are printed. */
  Wording wording() {
    return wording;
  }

  private void keep(Night night, Planned planned, Optional<List<Figures.Change>> changes) {
    var view = StatementComposer.compose(night, planned, Optional.empty(), changes, wording);
    made.add(new Made(planned, view));
  }

  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    keep(night, planned, changes);
    return plain.statement(night, planned, changes, figures);
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    keep(night, planned, Optional.of(List.of()));
    return plain.draft(night, planned, figures);
  }

  @Override
  public byte[] summary(MonthReport month) {
    return plain.summary(month);
  }

  @Override
  public byte[] morning(MorningReport report) {
    return plain.morning(report);
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    return plain.toPrint(night, customers);
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    return plain.mail(night, register, letter);
  }
}
