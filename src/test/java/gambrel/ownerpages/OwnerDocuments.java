package gambrel.ownerpages;

import gambrel.month.MonthReport;
import gambrel.reckoning.Night;
import gambrel.register.Figures;
import gambrel.register.MorningReport;
import gambrel.register.Planned;
import gambrel.render.DocumentInfo;
import gambrel.render.PageRenderer;
import gambrel.render.Templates;
import gambrel.run.Documents;
import gambrel.run.PlainDocuments;
import gambrel.shop.Settings;
import gambrel.statement.PageView;
import gambrel.wording.WordFiles;
import gambrel.wording.Wording;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The owner's pages as PDFs; customers' statements as lines of text. */
final class OwnerDocuments implements Documents {
  private final PlainDocuments plain = new PlainDocuments();
  private final Templates templates = new Templates(Optional.of(Path.of("templates")));
  private final PageRenderer renderer = new PageRenderer(templates);
  private final Wording wording;
  private final String author;

  OwnerDocuments(Settings settings) {
    this.wording = new WordFiles(templates::text, templates::text, settings).shop();
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
