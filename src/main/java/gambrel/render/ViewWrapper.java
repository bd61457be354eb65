package gambrel.render;

import freemarker.ext.beans.BeanModel;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.util.Optional;

/**
 * Shows a view to templates: records by their components, lists, maps, text, numbers and flags as
 * themselves, an enum as its name, an empty {@link Optional} as a missing value.
 */
final class ViewWrapper extends DefaultObjectWrapper {

  ViewWrapper(Version version) {
    super(version);
    setMemberAccessPolicy(new ViewAccess());
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    if (value instanceof Record) {
      return new BeanModel(value, this);
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
}
