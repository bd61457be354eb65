package gambrel.render;

import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Arrays;

/** Lets a template read the components of records and nothing else of any Java object. */
final class ViewAccess implements MemberAccessPolicy {

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
