package gambrel.night;

import gambrel.files.csv.OrderedParallel;
import gambrel.insight.month.MonthReport;
import gambrel.insight.usual.LikeBodies;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageMemory;
import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.pdf.PrintFile;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.Templates;
import gambrel.pages.statement.MailComposer;
import gambrel.pages.statement.StatementComposer;
import gambrel.pages.views.CoverView;
import gambrel.pages.views.PageView;
import gambrel.pages.views.StatementView;
import gambrel.pages.words.WordFiles;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.stream.Stream;

/**
 * Makes the PDFs of a night from the built-in templates and those of the shop.
 *
 * @param settings the settings of the shop
 * @param templates the templates, for messages
 * @param words the words of its readers
 * @param renderer fills the templates
 * @param like the bodies with which statements compare
 */
public record PdfDocuments(
    Settings settings, Templates templates, WordFiles words, PageRenderer renderer, LikeBodies like)
    implements Documents {
  private static final String WORDS = "words";
  private static final String COVER = "cover.ftlh";

  /** The language of the shop. */
  private static final String SHOP = "";

  /**
   * Begins to load on another thread what pages are made with.
   *
   * @param layOut whether pages will be laid out
   */
  public static void getReady(boolean layOut) {
    // A failure to load shows again when the first page is made.
    var unused = OrderedParallel.begin(Executors.callable(() -> makeOne(layOut)));
  }

  private static void makeOne(boolean layOut) {
    var renderer = new PageRenderer(Templates.builtIn());
    var view = new CoverView(new PageView("en", false, "", "", ""), List.of("x"));
    var info = new DocumentInfo("", "en", "", "", Instant.EPOCH);
    (layOut ? renderer : renderer.fillingOnly()).render(COVER, view, info, List.of());
  }

  /**
   * Documents of a shop.
   *
   * @param shopFolder the folder within which the settings' templates folder lies, if there is one
   */
  public static Documents of(Path shopFolder, Settings settings) {
    var builtIn = Templates.builtIn();
    var templates =
        settings.templates().map(shopFolder::resolve).map(Templates::of).orElse(builtIn);
    return new PdfDocuments(
        settings,
        templates,
        new WordFiles(builtIn.files()::text, templates.files()::text, settings),
        new PageRenderer(templates),
        new LikeBodies(settings, List.of()));
  }

  @Override
  public Documents comparing(LikeBodies bodies) {
    return new PdfDocuments(settings, templates, words, renderer, bodies);
  }

  @Override
  public Documents remembering(PageMemory memory) {
    return new PdfDocuments(settings, templates, words, renderer.remembering(memory), like);
  }

  @Override
  public Documents fillingOnly() {
    return new PdfDocuments(settings, templates, words, renderer.fillingOnly(), like);
  }

  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    var wording = wording(night, planned);
    var comparison = like.compare(planned.body());
    var view = StatementComposer.compose(night, planned, comparison, changes, wording);
    var info = info(view.page(), view.heading(), night.asOf().toInstant());
    return print(view, info, wording, figures);
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    var wording = wording(night, planned);
    var unchanged = Optional.of(List.<Figures.Change>of());
    var view = StatementComposer.compose(night, planned, Optional.empty(), unchanged, wording);
    var created = lastWeighed(Stream.of(planned.account())).orElse(night.asOf().toInstant());
    var info =
        info(view.page(), view.heading(), created).withWatermark(wording.say("watermark.draft"));
    return print(view, info, wording, figures);
  }

  @Override
  public byte[] summary(MonthReport report) {
    var view = SummaryComposer.compose(report, wording(SHOP));
    var created = created(report.records().night(), report.records().month());
    return renderer.render(
        "summary.ftlh", view, info(view.page(), view.heading(), created), List.of());
  }

  @Override
  public int findingsOnFirstPage(MonthReport month) {
    return SummaryComposer.findingsOnFirstPage(month, wording(SHOP));
  }

  @Override
  public byte[] morning(MorningReport report) {
    var view = MorningComposer.compose(report, wording(SHOP));
    var info = info(view.page(), view.heading(), report.night().asOf().toInstant());
    return renderer.render("morning.ftlh", view, info, List.of());
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    var pages = new ArrayList<byte[]>();
    for (var printed : customers) {
      if (settings.printing().cover()) {
        pages.add(cover(night, printed.customer()));
      }
      pages.addAll(printed.statements());
    }
    return PrintFile.of(
        pages, settings.printing().bothSides(), settings.name(), night.asOf().toInstant());
  }

  private byte[] cover(Night night, Customer customer) {
    var lines =
        Stream.of((customer.name() + ';' + customer.address()).split("[;\\n]"))
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .toList();
    boolean letter = settings.paper() == Settings.Paper.LETTER;
    String language = wording(customer.language()).language();
    var page = new PageView(language, letter, customer.name(), "", "");
    var view = new CoverView(page, lines);
    return renderer.render(COVER, view, info(page, "", night.asOf().toInstant()), List.of());
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    var wording = wording(letter.customer().language());
    var message = new MailComposer(night, register, letter, wording);
    return new MailText(
        message.subject(), wording.language(), templates.fill("mail.ftl", message.view()));
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

  private byte[] print(StatementView view, DocumentInfo info, Wording wording, byte[] figures) {
    String description = wording.say("statement.figures");
    var attached = new Attachment(RegisterStore.FIGURES, "text/csv", description, figures);
    return renderer.render("statement.ftlh", view, info, List.of(attached));
  }

  private DocumentInfo info(PageView page, String subject, Instant created) {
    return new DocumentInfo(page.title(), page.language(), settings.name(), subject, created);
  }

  /**
   * The date of a summary: when the last of the month's bodies was weighed last, else the beginning
   * of the month. So a summary of unchanged figures has the same bytes every night.
   */
  private static Instant created(Night night, YearMonth month) {
    var bodies =
        night.bodies().values().stream()
            .filter(account -> Months.of(account).anyMatch(month::equals));
    return lastWeighed(bodies)
        .orElseGet(() -> month.atDay(1).atStartOfDay(night.shop().settings().zone()).toInstant());
  }

  private static Optional<Instant> lastWeighed(Stream<BodyAccount> bodies) {
    return bodies
        .flatMap(account -> account.balance().weighings().all().stream())
        .map(weighing -> weighing.time().toInstant())
        .max(Comparator.naturalOrder());
  }
}
