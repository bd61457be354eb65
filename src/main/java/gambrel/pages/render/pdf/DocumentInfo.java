package gambrel.pages.render.pdf;

import java.time.Instant;
import java.util.Optional;

/**
 * The metadata of a PDF.
 *
 * @param title shown by viewers in place of the file name
 * @param language BCP 47 tag of the page's text, such as {@code en-NZ}
 * @param author the issuer of the document
 * @param subject one line about the content
 * @param created the only date in the document
 * @param watermark words painted large and light across every page
 */
public record DocumentInfo(
    String title,
    String language,
    String author,
    String subject,
    Instant created,
    Optional<String> watermark) {

  /** Removes invisible and control characters. */
  public DocumentInfo {
    title = PrintableText.withoutControls(title);
    language = PrintableText.withoutControls(language);
    author = PrintableText.withoutControls(author);
    subject = PrintableText.withoutControls(subject);
    watermark = watermark.map(PrintableText::withoutControls).filter(words -> !words.isBlank());
  }

  /** Information for a document without a watermark. */
  public DocumentInfo(
      String title, String language, String author, String subject, Instant created) {
    this(title, language, author, subject, created, Optional.empty());
  }

  /** The same document with {@code words} painted across every page. */
  public DocumentInfo withWatermark(String words) {
    return new DocumentInfo(title, language, author, subject, created, Optional.of(words));
  }
}
