package gambrel.pages.render;

import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.Templates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** A template folder to write into, and a look at what comes out. */
public final class Desk {

  public static final DocumentInfo INFO =
      new DocumentInfo(
          "Statement",
          "en-NZ",
          "Totara Boning Room",
          "Body 1207",
          Instant.parse("2026-03-01T05:00:00Z"));

  /** A view with the one name {@code name}. */
  public record Named(String name) {}

  private final Path folder;

  public Desk(Path folder) {
    this.folder = folder;
  }

  public Desk put(String file, String content) {
    return put(file, content.getBytes(StandardCharsets.UTF_8));
  }

  public Desk put(String file, byte[] content) {
    try {
      Files.write(folder.resolve(file), content);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Templates templates() {
    return Templates.of(folder);
  }

  public byte[] render(String body, Record view) {
    return render(body, view, INFO);
  }

  /** Renders a page of this body, whose leading style elements go into the head. */
  public byte[] render(String body, Record view, DocumentInfo info, Attachment... attachments) {
    var styles = body.lastIndexOf("</style>") < 0 ? 0 : body.lastIndexOf("</style>") + 8;
    put(
        "page.ftlh",
        "<html><head>%s</head><body>%s</body></html>"
            .formatted(body.substring(0, styles), body.substring(styles)));
    return new PageRenderer(templates()).render("page.ftlh", view, info, List.of(attachments));
  }

  /** The text of each page as a reader of the PDF would extract it. */
  static List<String> pages(byte[] pdf) {
    return PrintedPages.of(pdf);
  }

  static String text(byte[] pdf) {
    return String.join("\n", pages(pdf));
  }
}
