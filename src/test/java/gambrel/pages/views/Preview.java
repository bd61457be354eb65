package gambrel.pages.views;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** Renders every sample into a folder, to be looked at. */
public final class Preview {

  private static final Instant CREATED = Instant.parse("2026-04-02T02:00:00Z");

  private Preview() {}

  /** Renders all samples into the folder that the first argument names. */
  public static void main(String[] args) throws IOException {
    var folder = Files.createDirectories(Path.of(args[0]));
    var renderer = new PageRenderer(Templates.of(SampleWords.FOLDER));
    for (var sample : SampleViews.all().entrySet()) {
      Files.write(folder.resolve(sample.getKey() + ".pdf"), render(renderer, sample.getValue()));
    }
  }

  /** Renders a sample, marked as a draft where it is one. */
  static byte[] render(PageRenderer renderer, Record view) {
    return renderer.render(SampleViews.template(view), view, info(view), List.of());
  }

  private static DocumentInfo info(Record view) {
    if (view instanceof StatementView statement) {
      var info = info(statement.page());
      return statement.draft().isPresent()
          ? info.withWatermark(SampleWords.ENGLISH.say("watermark.draft"))
          : info;
    }
    return info(view instanceof SummaryView summary ? summary.page() : ((MorningView) view).page());
  }

  private static DocumentInfo info(PageView page) {
    return new DocumentInfo(
        page.title(), page.language(), SampleStatement.SHOP.name(), page.title(), CREATED);
  }
}
