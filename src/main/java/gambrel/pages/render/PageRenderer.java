package gambrel.pages.render;

import gambrel.pages.render.pdf.ArchiveListener;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.pdf.Fonts;
import gambrel.pages.render.pdf.TaggingDevice;
import gambrel.pages.render.pdf.Watermark;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.Templates;
import gambrel.pages.render.template.TimeLimit;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.codec.digest.DigestUtils;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.DefaultLineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.util.XRLog;

/**
 * Makes PDFs from templates. The same templates, view, information and attachments give the same
 * bytes.
 *
 * <p>Safe for use by several threads.
 */
public final class PageRenderer {

  private static final Duration DEFAULT_LIMIT = Duration.ofSeconds(60);
  private static final float DOTS_PER_POINT = ITextRenderer.DEFAULT_DOTS_PER_POINT;
  private static final int DOTS_PER_PIXEL = ITextRenderer.DEFAULT_DOTS_PER_PIXEL;

  static {
    XRLog.setLoggingEnabled(false);
  }

  private final Templates templates;
  private final TimeLimit limit;
  private final PageMemory memory;
  private final String makers;
  private final boolean layOut;
  private final StyleSheets styles = new StyleSheets();

  /** A renderer that gives each page a minute. */
  public PageRenderer(Templates templates) {
    this(templates, DEFAULT_LIMIT);
  }

  /** A renderer that gives each page the time {@code limit}. */
  public PageRenderer(Templates templates, Duration limit) {
    this(templates, new TimeLimit(limit), PageMemory.NONE, "", true);
  }

  private PageRenderer(
      Templates templates, TimeLimit limit, PageMemory memory, String makers, boolean layOut) {
    this.templates = templates;
    this.limit = limit;
    this.memory = memory;
    this.makers = makers;
    this.layOut = layOut;
  }

  /** This renderer, with pages of the same program, templates and input from {@code memory}. */
  public PageRenderer remembering(PageMemory memory) {
    return layOut
        ? templates.files().fingerprint().map(m -> remembering(memory, m)).orElse(this)
        : this;
  }

  PageRenderer remembering(PageMemory memory, String makers) {
    return new PageRenderer(templates, limit, memory, makers, layOut);
  }

  /** This renderer without layout: it fills templates, checks their markup and returns no bytes. */
  public PageRenderer fillingOnly() {
    return new PageRenderer(templates, limit, PageMemory.NONE, makers, false);
  }

  /**
   * Renders one document.
   *
   * @param template file name among the templates, such as {@code statement.ftlh}
   * @param view a public record whose components the template names
   * @param info title, language and other metadata
   * @param attachments files to embed, each under its own name
   * @return the bytes of a tagged file (PDF/UA-1) for archives (PDF/A-3a)
   * @throws TemplateProblem if the template, or a file that it uses, is missing or wrong
   */
  public byte[] render(
      String template, Record view, DocumentInfo info, List<Attachment> attachments) {
    return limit.within(template, () -> make(template, view, info, attachments));
  }

  private byte[] make(
      String template, Record view, DocumentInfo info, List<Attachment> attachments) {
    var xhtml = templates.fill(template, view);
    if (!layOut) {
      XhtmlParser.check(template, xhtml);
      return new byte[0];
    }
    String id = id(xhtml, info, attachments);
    return memory.page(makers + id, () -> make(template, xhtml, info, attachments, id));
  }

  private byte[] make(
      String template, String xhtml, DocumentInfo info, List<Attachment> attachments, String id) {
    var page = XhtmlParser.parse(template, xhtml);
    var device = new TaggingDevice(DOTS_PER_POINT);
    var agent = new ClosedUserAgent(template, templates.files(), device, DOTS_PER_PIXEL);
    var renderer = renderer(template, device, agent);
    info.watermark().ifPresent(words -> renderer.setPdfPageEvent(new Watermark(words)));
    renderer.setListener(new ArchiveListener(info, attachments, id));
    renderer.setDocument(page, ClosedUserAgent.BASE, new PageNamespace());
    renderer.layout();
    var bytes = new ByteArrayOutputStream(1 << 16);
    renderer.createPDF(bytes);
    agent.check();
    return Fonts.fixTags(bytes.toByteArray());
  }

  private ITextRenderer renderer(String template, ITextOutputDevice device, ClosedUserAgent agent) {
    var renderer =
        new ITextRenderer(
            DOTS_PER_POINT,
            DOTS_PER_PIXEL,
            device,
            agent,
            Fonts.resolver(),
            new Pictures(template, device, DOTS_PER_PIXEL),
            new ITextTextRenderer());
    renderer.getSharedContext().setCss(new PageStyles(styles, agent));
    renderer.getSharedContext().setLineBreakingStrategy(new LineBreaks());
    renderer.setPDFVersion('7');
    return renderer;
  }

  /** The document's id: half of the SHA-256 of all input, in hexadecimal. */
  private static String id(String xhtml, DocumentInfo info, List<Attachment> attachments) {
    var digest = DigestUtils.getSha256Digest();
    digest.update((xhtml + '\0' + info).getBytes(StandardCharsets.UTF_8));
    for (var attachment : attachments) {
      digest.update(attachment.toString().getBytes(StandardCharsets.UTF_8));
      digest.update(attachment.content());
    }
    return HexFormat.of().formatHex(digest.digest(), 0, 16);
  }

  /**
   * The layout engine's line breaks, except those after an apostrophe or a full stop within a word:
   * {@code l’animal} and {@code bodies.csv} are not broken.
   */
  private static final class LineBreaks implements LineBreakingStrategy {
    private static final String WITHIN_WORDS = "\u2019'.";

    private final LineBreakingStrategy usual = new DefaultLineBreakingStrategy();

    @Override
    public BreakPointsProvider getBreakPointsProvider(
        String text, String language, CalculatedStyle style) {
      var points = usual.getBreakPointsProvider(text, language, style);
      return () -> next(points, text);
    }

    private static BreakPoint next(BreakPointsProvider points, String text) {
      var point = points.next();
      while (point != null && isWithinWord(text, point.getPosition())) {
        point = points.next();
      }
      return point;
    }

    private static boolean isWithinWord(String text, int position) {
      return position > 0
          && position < text.length()
          && WITHIN_WORDS.indexOf(text.charAt(position - 1)) >= 0
          && Character.isLetterOrDigit(text.charAt(position));
    }
  }
}
