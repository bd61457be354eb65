package gambrel.trade.rows;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A row that a person can paste into a file of the shop. */
public final class PastedRow {
  private PastedRow() {}

  /** The row of these cells, in quotes where a comma or the like needs them. */
  public static String of(String... cells) {
    return Stream.of(cells).map(PastedRow::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",;\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
