package gambrel.pages.render.template;

import freemarker.ext.beans.BeanModel;
import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Optional;

/**
 * Makes a view readable for templates: a record has its components, an enum is its name, an empty
 * {@link Optional} is a missing value. Lists, maps, texts, numbers and flags are what they are.
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

  /** Lets a template read the components of records and nothing else of any Java object. */
  private static final class ViewAccess implements MemberAccessPolicy {

    @Override
    public ClassMemberAccessPolicy forClass(Class<?> type) {
      return new ComponentsOnly();
    }

    @Override
    public boolean isToStringAlwaysExposed() {
      return false;
    }

    private static final class ComponentsOnly implements ClassMemberAccessPolicy {
      @Override
      public boolean isMethodExposed(Method method) {
        var owner = method.getDeclaringClass();
        return owner.isRecord()
            && Arrays.stream(owner.getRecordComponents())
                .anyMatch(component -> component.getAccessor().equals(method));
      }

      @Override
      public boolean isConstructorExposed(Constructor<?> constructor) {
        return false;
      }

      @Override
      public boolean isFieldExposed(Field field) {
        return false;
      }
    }
  }
}
