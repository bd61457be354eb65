package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;

/** Headers and text cells as files show them. */
final class Print {
  private Print() {}

  /** A header; {@code _kg} reads {@code _lb} in a pound shop. */
  static List<List<String>> table(Setup setup, String header) {
    var rows = new ArrayList<List<String>>();
    var named = setup.unit.equals("lb") ? header.replace("_kg", "_lb") : header;
    rows.add(List.of(named.split(",")));
    return rows;
  }

  /** A text cell that a spreadsheet will not take for a formula. */
  static String text(String value) {
    return !value.isEmpty() && "=+-@\t\r".indexOf(value.charAt(0)) >= 0 ? "'" + value : value;
  }

  static String whole(Object value) {
    return value == null ? "" : value.toString();
  }
}
