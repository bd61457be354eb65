package gambrel.pages.render.template;

import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleHash;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.util.Optional;

/**
 * Makes a view readable for templates: a record has its components, an enum is its name, an empty
 * {@link Optional} is a missing value. Lists, maps, texts, numbers and flags are what they are.
 */
final class ViewWrapper extends DefaultObjectWrapper {

  ViewWrapper(Version version) {
    super(version);
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    if (value instanceof Record view) {
      return components(view);
    }
    if (value instanceof Optional<?> optional) {
      return wrap(optional.orElse(null));
    }
    if (value instanceof Enum<?> constant) {
      return new SimpleScalar(constant.name());
    }
    throw new TemplateModelException(
        "A view may not hold a " + value.getClass().getSimpleName() + ": give the page text.");
  }

  private TemplateModel components(Record view) throws TemplateModelException {
    var components = new SimpleHash(this);
    try {
      for (var component : view.getClass().getRecordComponents()) {
        components.put(component.getName(), component.getAccessor().invoke(view));
      }
    } catch (ReflectiveOperationException e) {
      throw new TemplateModelException(e);
    }
    return components;
  }
}
