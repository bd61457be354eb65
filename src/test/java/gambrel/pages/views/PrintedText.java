package gambrel.pages.views;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Every text of a view that its page has to print. */
final class PrintedText {

  /** Names that style sheets, viewers or the drawing use, and words that only some pages need. */
  private static final Set<String> NOT_PRINTED =
      Set.of(
          "page",
          "words",
          "key",
          "description",
          "trace",
          "style",
          "room",
          "columns",
          "span",
          "spark");

  private PrintedText() {}

  static List<String> of(Record view) {
    var texts = new ArrayList<String>();
    collect(view, texts);
    return texts;
  }

  private static void collect(Object value, List<String> texts) {
    if (value instanceof String text) {
      texts.add(text);
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(content -> collect(content, texts));
    } else if (value instanceof Collection<?> list) {
      list.forEach(element -> collect(element, texts));
    } else if (value instanceof Record view) {
      for (var component : view.getClass().getRecordComponents()) {
        if (!NOT_PRINTED.contains(component.getName())) {
          collect(read(view, component), texts);
        }
      }
    }
  }

  private static Object read(Record view, RecordComponent component) {
    try {
      return component.getAccessor().invoke(view);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
