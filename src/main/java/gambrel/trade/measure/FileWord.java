package gambrel.trade.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A constant of an enum that files write as one word: its name in lower case with hyphens. */
public interface FileWord {
  /** The name of the constant. */
  String name();

  /** The word that files use. */
  default String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The constant with that id, without regard to case or outer blanks; empty if there is none. */
  static <E extends Enum<E> & FileWord> Optional<E> find(Class<E> type, String text) {
    String id = text.strip().toLowerCase(Locale.ROOT);
    return Stream.of(type.getEnumConstants()).filter(word -> word.id().equals(id)).findFirst();
  }
}
