package gambrel.pages.render.template;

import freemarker.cache.TemplateLoader;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.Map;
import java.util.regex.Pattern;

/** Loads templates for FreeMarker from {@link TemplateFiles}. */
final class TemplateSource implements TemplateLoader {

  /**
   * The machine's clock in an expression or a directive. Templates may not use it, since the same
   * input must give the same page.
   */
  private static final Pattern CLOCK =
      Pattern.compile("(?:[$#]\\{[^}]*|<[#@][^>]*)(?<![\\w)\\]])\\.now\\b");

  private record Text(String name, String content) {}

  private final TemplateFiles files;

  TemplateSource(TemplateFiles files) {
    this.files = files;
  }

  @Override
  public Object findTemplateSource(String name) {
    return files.text(name).map(content -> new Text(name, content)).orElse(null);
  }

  /** Always 0, since files are read once. */
  @Override
  public long getLastModified(Object source) {
    return 0;
  }

  @Override
  public Reader getReader(Object source, String encoding) throws IOException {
    var text = (Text) source;
    var clock = CLOCK.matcher(text.content());
    if (clock.find()) {
      var before = text.content().substring(0, clock.end());
      var line = (int) before.chars().filter(c -> c == '\n').count() + 1;
      var column = before.length() - before.lastIndexOf('\n') - ".now".length();
      throw new TemplateProblem(text.name(), line, column, Fault.CLOCK, Map.of(), null);
    }
    return new StringReader(text.content());
  }

  @Override
  public void closeTemplateSource(Object source) {
    // has no resources
  }
}
