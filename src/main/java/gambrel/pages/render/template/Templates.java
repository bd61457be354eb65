package gambrel.pages.render.template;

import freemarker.cache.StrongCacheStorage;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.Version;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.WeakHashMap;
import java.util.regex.Pattern;
import org.apache.commons.io.output.ProxyWriter;
import org.apache.commons.io.output.StringBuilderWriter;

/**
 * The shop's templates over the built-in ones.
 *
 * <p>A template can read one view record and the other templates: no Java object, no clock, no
 * setting of the machine. Safe for use by several threads.
 */
public final class Templates {

  private static final Version LANGUAGE = Configuration.VERSION_2_3_35;
  private static final int LONGEST_PAGE = 16_000_000;

  /**
   * The machine's clock in an expression or a directive. Templates may not use it, since the same
   * input must give the same page.
   */
  private static final Pattern CLOCK =
      Pattern.compile("(?:[$#]\\{[^}]*|<[#@][^>]*)(?<![\\w)\\]])\\.now\\b");

  private static final Templates BUILT_IN = new Templates(new TemplateFiles(Optional.empty()));

  private final TemplateFiles files;
  private final Configuration language;

  private record Text(String name, String content) {}

  private Templates(TemplateFiles files) {
    this.files = files;
    language = configure(new InterruptibleConfiguration());
    language.setTemplateLoader(new TemplateSource());
  }

  /** The built-in templates, which are read once. */
  public static Templates builtIn() {
    return BUILT_IN;
  }

  /** The templates of a shop's folder, each in place of the built-in one of the same name. */
  public static Templates of(Path shopFolder) {
    return new Templates(new TemplateFiles(Optional.of(shopFolder)));
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
    var page = new StringBuilder(1 << 14);
    try {
      find(template).process(view, limited(page));
    } catch (TemplateException e) {
      throw explain(template, e);
    } catch (IOException e) {
      // Files are read before: only the size limit ends here.
      throw TemplateProblem.of(template, Fault.TOO_LONG, Map.of(), e);
    }
    return page.toString();
  }

  /** The templates, and the style sheets, pictures and words that pages may use. */
  public TemplateFiles files() {
    return files;
  }

  /** Writes to {@code page}, up to a limit that sensible pages do not reach. */
  private static Writer limited(StringBuilder page) {
    return new ProxyWriter(new StringBuilderWriter(page)) {
      @Override
      protected void beforeWrite(int length) throws IOException {
        if (page.length() + length > LONGEST_PAGE) {
          throw new IOException("the page grows without end");
        }
      }
    };
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

  /**
   * Adds a check for interruption to every loop of every template, so that an endless template can
   * be stopped.
   */
  private static final class InterruptibleConfiguration extends Configuration {
    private final Set<Template> checked = Collections.newSetFromMap(new WeakHashMap<>());

    InterruptibleConfiguration() {
      super(LANGUAGE);
    }

    @Override
    public Template getTemplate(
        String name,
        Locale locale,
        Object lookupCondition,
        String encoding,
        boolean parse,
        boolean ignoreMissing)
        throws IOException {
      var template =
          super.getTemplate(name, locale, lookupCondition, encoding, parse, ignoreMissing);
      synchronized (checked) {
        if (template != null && checked.add(template)) {
          _CoreAPI.addThreadInterruptedChecks(template);
        }
      }
      return template;
    }
  }

  /** Loads templates for FreeMarker. */
  private final class TemplateSource implements TemplateLoader {

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
}
