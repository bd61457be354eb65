package gambrel.trade.rows;

import java.util.Locale;
import java.util.Optional;

/** The meaning of a row's status cell. */
public sealed interface Status {
  /** A weighing. */
  record Ok() implements Status {}

  /** Cancels the ticket of its own row. */
  record VoidOwn() implements Status {}

  /** Cancels another ticket of the same scale. */
  record VoidTicket(String ticket) implements Status {}

  /** Not understood. */
  record Unknown(String text) implements Status {}

  /** Reads a status cell. */
  static Status of(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    if (word.isEmpty() || word.equals("ok")) {
      return new Ok();
    }
    if (word.equals("void")) {
      return new VoidOwn();
    }
    if (word.startsWith("void:") && word.length() > "void:".length()) {
      return new VoidTicket(text.strip().substring("void:".length()).strip());
    }
    return new Unknown(text.strip());
  }

  /** Whether the row cancels a weighing. */
  default boolean isVoid() {
    return this instanceof VoidOwn || this instanceof VoidTicket;
  }

  /** The other ticket that the row cancels; empty if it names none. */
  default Optional<String> voids() {
    return this instanceof VoidTicket other ? Optional.of(other.ticket()) : Optional.empty();
  }
}
