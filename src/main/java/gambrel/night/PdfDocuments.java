package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageMemory;
import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.Templates;
import gambrel.pages.statement.StatementComposer;
import gambrel.pages.views.PageView;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.WordFiles;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The PDFs of a night, from templates that the shop may have made its own. */
public final class PdfDocuments implements Documents {
  private static final String WORDS = "words";

  /** No language of its own: the shop's. */
  private static final String SHOP = "";

  private final Settings settings;
  private final WordFiles words;
  private final PageRenderer renderer;

  private PdfDocuments(Settings settings, WordFiles words, PageRenderer renderer) {
    this.settings = settings;
    this.words = words;
    this.renderer = renderer;
  }

  /** Loads what pages are made with, beside whatever the caller does meanwhile. */
  public static void getReady() {
    // A failure to load shows again when the first page is made.
    var unused =
        OrderedParallel.begin(
            () -> {
              PageRenderer.getReady();
              return WORDS;
            });
  }

  /**
   * Documents of a shop.
   *
   * @param shopFolder the folder within which the settings' templates folder lies, if there is one
   */
  public static Documents of(Path shopFolder, Settings settings) {
    var builtIn = new Templates(Optional.empty());
    var templates = new Templates(settings.templates().map(shopFolder::resolve));
    return new PdfDocuments(
        settings,
        new WordFiles(builtIn::text, templates::text, settings),
        new PageRenderer(templates));
  }

  @Override
  public Documents remembering(PageMemory memory) {
    return new PdfDocuments(settings, words, renderer.remembering(memory));
  }

  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    var wording = wording(night, planned);
    var view = StatementComposer.compose(night, planned, changes, false, wording);
    var info = info(view.page(), view.heading(), night.asOf().toInstant());
    return print(view, info, figures(wording, figures));
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    var wording = wording(night, planned);
    var view = StatementComposer.compose(night, planned, Optional.of(List.of()), true, wording);
    var info =
        info(view.page(), view.heading(), dateOfDraft(planned, night))
            .withWatermark(wording.say("watermark.draft"));
    return print(view, info, figures(wording, figures));
  }

  @Override
  public byte[] summary(MonthReport month) {
    var view = SummaryComposer.compose(month, wording(SHOP));
    var info =
        info(
            view.page(),
            view.heading(),
            DocumentDates.of(month.records().night(), month.records().month()));
    return renderer.render("summary.ftlh", view, info, List.of());
  }

  @Override
  public byte[] morning(MorningReport report) {
    var view = MorningComposer.compose(report, wording(SHOP));
    var info = info(view.page(), view.heading(), report.night().asOf().toInstant());
    return renderer.render("morning.ftlh", view, info, List.of());
  }

  private Wording wording(Night night, Planned planned) {
    return wording(night.shop().customer(planned.customer()).language());
  }

  private Wording wording(String language) {
    try {
      return words.of(language);
    } catch (IllegalArgumentException e) {
      throw TemplateProblem.of(
          WORDS, TemplateProblem.Fault.WORDS, Map.of("message", e.getMessage()), e);
    }
  }

  private byte[] print(StatementView view, DocumentInfo info, Attachment figures) {
    return renderer.render("statement.ftlh", view, info, List.of(figures));
  }

  private static Attachment figures(Wording wording, byte[] figures) {
    String description = wording.say("statement.figures");
    return new Attachment(RegisterStore.FIGURES, "text/csv", description, figures);
  }

  private DocumentInfo info(PageView page, String subject, Instant created) {
    return new DocumentInfo(page.title(), page.language(), settings.name(), subject, created);
  }

  private static Instant dateOfDraft(Planned planned, Night night) {
    return DocumentDates.of(planned.account()).orElse(night.asOf().toInstant());
  }
}
