package gambrel.pages.render.template;

import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.regex.Pattern;

/** Hands {@link TemplateFiles} to the template language. */
final class TemplateSource implements TemplateLoader {

  /**
   * A page must be the same whenever it is made, so a template may not ask for the machine's clock.
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

  /** Always the same: files are read once. */
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
      throw TemplateProblem.at(
          text.name(), line, column, ".now is the machine's clock; print a date of the page", null);
    }
    return new StringReader(text.content());
  }

  @Override
  public void closeTemplateSource(Object source) {
    // nothing is held open
  }
}
