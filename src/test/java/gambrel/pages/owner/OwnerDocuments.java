package gambrel.pages.owner;

import gambrel.insight.month.MonthReport;
import gambrel.night.Documents;
import gambrel.night.PlainDocuments;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.Templates;
import gambrel.pages.views.PageView;
import gambrel.pages.words.WordFiles;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The owner's pages as PDFs; customers' statements as lines of text. */
final class OwnerDocuments implements Documents {
  private final PlainDocuments plain = new PlainDocuments();
  private final Templates templates = Templates.of(Path.of("templates"));
  private final PageRenderer renderer = new PageRenderer(templates);
  private final Wording wording;
  private final String author;

  OwnerDocuments(Settings settings) {
    this.wording = new WordFiles(templates.files()::text, templates.files()::text, settings).of("");
    this.author = settings.name();
  }

  Wording wording() {
    return wording;
  }

  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    return plain.statement(night, planned, changes, figures);
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    return plain.draft(night, planned, figures);
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    return plain.toPrint(night, customers);
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    return plain.mail(night, register, letter);
  }

  @Override
  public byte[] summary(MonthReport month) {
    var view = SummaryComposer.compose(month, wording);
    return renderer.render("summary.ftlh", view, info(view.page()), List.of());
  }

  @Override
  public byte[] morning(MorningReport report) {
    var view = MorningComposer.compose(report, wording);
    return renderer.render("morning.ftlh", view, info(view.page()), List.of());
  }

  private DocumentInfo info(PageView page) {
    return new DocumentInfo(
        page.title(), page.language(), author, page.title(), Instant.parse("2026-10-01T00:00:00Z"));
  }
}
