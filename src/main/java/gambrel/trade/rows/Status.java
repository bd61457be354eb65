package gambrel.trade.rows;

import java.util.Locale;

/** What the status cell of a row says. */
public sealed interface Status {
  /** A weighing like any other. */
  record Ok() implements Status {}

  /** Cancels the ticket that it stands on. */
  record VoidOwn() implements Status {}

  /** Cancels another ticket of the same scale. */
  record VoidTicket(String ticket) implements Status {}

  /** Not understood. */
  record Unknown(String text) implements Status {}

  /** Reads a status cell. */
  static Status of(String text) {
    if (text.isEmpty()) {
      return new Ok();
    }
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

  /** Whether the row cancels something. */
  default boolean isVoid() {
    return this instanceof VoidOwn || this instanceof VoidTicket;
  }
}
