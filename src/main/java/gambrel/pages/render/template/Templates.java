package gambrel.pages.render.template;

import freemarker.cache.StrongCacheStorage;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.Version;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;

/**
 * The shop's templates over the built-in ones.
 *
 * <p>A template can read one view record and the other templates: no Java object, no clock, no
 * setting of the machine. Safe for use by several threads.
 */
public final class Templates {

  private static final Version LANGUAGE = Configuration.VERSION_2_3_35;

  private final TemplateFiles files;
  private final Configuration language;

  /**
   * Opens the templates.
   *
   * @param shopFolder the shop's own templates; each replaces the built-in one of the same name
   */
  public Templates(Optional<Path> shopFolder) {
    files = new TemplateFiles(shopFolder);
    language = configure(new InterruptibleConfiguration(LANGUAGE));
    language.setTemplateLoader(new TemplateSource(files));
  }

  /**
   * Fills a template.
   *
   * @param template file name, such as {@code statement.ftlh}
   * @param view record whose components are the names that the template knows
   * @return the page as XHTML
   * @throws TemplateProblem if the template is missing or wrong, or names what the view lacks
   */
  public String fill(String template, Record view) {
    var page = new PageText();
    try {
      find(template).process(view, page);
    } catch (TemplateException e) {
      throw explain(template, e);
    } catch (IOException e) {
      // Files are read before: only the page's own size limit ends here.
      throw TemplateProblem.of(template, Fault.TOO_LONG, Map.of(), e);
    }
    return page.toString();
  }

  /**
   * The text of a file, such as the words of a language; empty if there is no such file.
   *
   * @throws TemplateProblem if it is not saved as UTF-8
   */
  public Optional<String> text(String name) {
    return files.text(name);
  }

  /** An id of the program and the files; empty if the program does not run from a jar. */
  public Optional<String> fingerprint() {
    return files.fingerprint();
  }

  /** The style sheets and pictures that pages may use. */
  public TemplateFiles files() {
    return files;
  }

  private Template find(String template) throws IOException {
    try {
      return language.getTemplate(template);
    } catch (ParseException e) {
      throw explain(e);
    } catch (TemplateNotFoundException | MalformedTemplateNameException e) {
      throw TemplateProblem.missingFile(template, template);
    }
  }

  private static Configuration configure(Configuration language) {
    language.setDefaultEncoding("UTF-8");
    language.setOutputEncoding("UTF-8");
    language.setOutputFormat(HTMLOutputFormat.INSTANCE);
    language.setLocale(Locale.ROOT);
    language.setLocalizedLookup(false);
    language.setTimeZone(TimeZone.getTimeZone("UTC"));
    language.setNumberFormat("computer");
    language.setBooleanFormat("c");
    language.setObjectWrapper(new ViewWrapper(LANGUAGE));
    language.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    language.setAPIBuiltinEnabled(false);
    language.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    language.setAttemptExceptionReporter((problem, where) -> {});
    language.setLogTemplateExceptions(false);
    language.setWrapUncheckedExceptions(true);
    language.setFallbackOnNullLoopVariable(false);
    language.setCacheStorage(new StrongCacheStorage());
    language.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    return language;
  }

  private static TemplateProblem explain(ParseException e) {
    return new TemplateProblem(
        e.getTemplateName(),
        e.getLineNumber(),
        e.getColumnNumber(),
        Fault.LANGUAGE,
        Map.of("message", e.getEditorMessage()),
        e);
  }

  /** The problem of a page. Its cause may be a problem of an included file. */
  private static TemplateProblem explain(String page, TemplateException e) {
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof TemplateProblem problem) {
        return problem;
      }
      if (cause instanceof ParseException wrong) {
        return explain(wrong);
      }
      if (cause instanceof TemplateNotFoundException missing) {
        return TemplateProblem.missingFile(file(page, e), missing.getTemplateName());
      }
    }
    var name = e.getBlamedExpressionString();
    boolean named = e instanceof InvalidReferenceException && name != null;
    return new TemplateProblem(
        file(page, e),
        e.getLineNumber() == null ? 0 : e.getLineNumber(),
        e.getColumnNumber() == null ? 0 : e.getColumnNumber(),
        named ? Fault.NO_NAME : Fault.LANGUAGE,
        named ? Map.of("name", name) : Map.of("message", firstParagraph(e)),
        e);
  }

  private static String file(String page, TemplateException e) {
    return e.getTemplateSourceName() == null ? page : e.getTemplateSourceName();
  }

  private static String firstParagraph(TemplateException e) {
    var message = String.valueOf(e.getMessageWithoutStackTop());
    var end = message.indexOf("\n\n----");
    return (end < 0 ? message : message.substring(0, end)).replaceAll("\\s*\\R\\s*", " ").strip();
  }

  /** Collects the text of a page, up to a limit that sensible pages do not reach. */
  private static final class PageText extends Writer {

    private static final int LIMIT = 16_000_000;

    private final StringBuilder text = new StringBuilder(1 << 14);

    @Override
    public void write(char[] buffer, int offset, int length) throws IOException {
      if (text.length() + length > LIMIT) {
        throw new IOException("the page grows without end");
      }
      text.append(buffer, offset, length);
    }

    @Override
    public void flush() {
      // kept in memory
    }

    @Override
    public void close() {
      // kept in memory
    }

    @Override
    public String toString() {
      return text.toString();
    }
  }
}
