package gambrel.trade.rows;

import java.util.Locale;
import java.util.Optional;

/**
 * The meaning of a row's status cell.
 *
 * @param isVoid whether the row cancels a weighing
 * @param isRepeat whether the row only says that the weighing of its ticket was printed again
 * @param voids the other ticket of the same scale that it cancels; empty if it names none
 * @param unknown the text of the cell if it is not understood
 */
public record Status(
    boolean isVoid, boolean isRepeat, Optional<String> voids, Optional<String> unknown) {
  /** Reads a status cell. */
  public static Status of(String text) {
    String cell = text.strip();
    String word = cell.toLowerCase(Locale.ROOT);
    boolean named = word.startsWith("void:") && word.length() > "void:".length();
    boolean isVoid = named || word.equals("void");
    boolean isRepeat = word.equals("repeat");
    return new Status(
        isVoid,
        isRepeat,
        Optional.of(cell).filter(c -> named).map(c -> c.substring("void:".length()).strip()),
        Optional.of(cell)
            .filter(c -> !isVoid && !isRepeat && !word.isEmpty() && !word.equals("ok")));
  }
}
