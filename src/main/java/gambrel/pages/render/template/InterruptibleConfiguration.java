package gambrel.pages.render.template;

import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.Version;
import java.io.IOException;
import java.util.Collections;
import java.util.Locale;
import java.util.Set;
import java.util.WeakHashMap;

/**
 * Adds a check for interruption to every loop of every template, so that an endless template can be
 * stopped.
 */
final class InterruptibleConfiguration extends Configuration {

  private final Set<Template> checked = Collections.newSetFromMap(new WeakHashMap<>());

  InterruptibleConfiguration(Version version) {
    super(version);
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
    var template = super.getTemplate(name, locale, lookupCondition, encoding, parse, ignoreMissing);
    synchronized (checked) {
      if (template != null && checked.add(template)) {
        _CoreAPI.addThreadInterruptedChecks(template);
      }
    }
    return template;
  }
}
