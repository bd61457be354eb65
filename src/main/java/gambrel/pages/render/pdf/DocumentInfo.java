package gambrel.pages.render.pdf;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * What a PDF says about itself.
 *
 * @param title shown by viewers in place of the file name
 * @param language BCP 47 tag of the page's text, such as {@code en-NZ}
 * @param author who issues the document
 * @param subject one line on what it is about
 * @param created date of the document; also its only date, so that equal inputs give equal bytes
 * @param watermark words painted large and light across every page
 */
public record DocumentInfo(
    String title,
    String language,
    String author,
    String subject,
    Instant created,
    Optional<String> watermark) {

  /** Takes invisible and control characters out of the words. */
  public DocumentInfo {
    title = PrintableText.withoutControls(title);
    language = PrintableText.withoutControls(language);
    author = PrintableText.withoutControls(author);
    subject = PrintableText.withoutControls(subject);
    Objects.requireNonNull(created, "created");
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
