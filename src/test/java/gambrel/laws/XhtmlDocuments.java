package gambrel.laws;

import gambrel.insight.month.MonthReport;
import gambrel.insight.usual.LikeBodies;
import gambrel.night.Documents;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.template.Templates;
import gambrel.pages.statement.MailComposer;
import gambrel.pages.statement.StatementComposer;
import gambrel.pages.words.WordFiles;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import gambrel.trade.shop.Settings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The pages of a night as the XHTML that would be laid out, for tests that read what they say. The
 * attachment of a statement follows its page, parted by {@link #ATTACHED}.
 */
public final class XhtmlDocuments implements Documents {
  /** Stands between a page and what is attached to it. */
  static final char ATTACHED = '\0';

  private static final Templates TEMPLATES = Templates.of(Path.of("templates"));

  private final WordFiles words;
  private final LikeBodies like;

  /** The pages of a shop with the templates of the program. */
  public XhtmlDocuments(Settings settings) {
    this(
        new WordFiles(TEMPLATES.files()::text, TEMPLATES.files()::text, settings),
        new LikeBodies(settings, List.of()));
  }

  private XhtmlDocuments(WordFiles words, LikeBodies like) {
    this.words = words;
    this.like = like;
  }

  @Override
  public Documents comparing(LikeBodies bodies) {
    return new XhtmlDocuments(words, bodies);
  }

  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    var wording = words.of(night.shop().customer(planned.customer()).language());
    var view =
        StatementComposer.compose(night, planned, like.compare(planned.body()), changes, wording);
    return bytes("statement.ftlh", view, ATTACHED + new String(figures, StandardCharsets.UTF_8));
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    return statement(night, planned, Optional.of(List.of()), figures);
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    return new byte[0];
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    var wording = words.of(letter.customer().language());
    var message = new MailComposer(night, register, letter, wording);
    return new MailText(
        message.subject(), wording.language(), TEMPLATES.fill("mail.ftl", message.view()));
  }

  @Override
  public byte[] summary(MonthReport month) {
    return bytes("summary.ftlh", SummaryComposer.compose(month, wording()), "");
  }

  @Override
  public byte[] morning(MorningReport report) {
    return bytes("morning.ftlh", MorningComposer.compose(report, wording()), "");
  }

  private Wording wording() {
    return words.of("");
  }

  private static byte[] bytes(String template, Record view, String attached) {
    return (TEMPLATES.fill(template, view) + attached).getBytes(StandardCharsets.UTF_8);
  }
}
