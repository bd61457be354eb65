package gambrel.oracle;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;

/** One line of an export in the making. */
final class ExportLine {
  final LocalDateTime time;
  final Map<String, String> cells = new HashMap<>();

  ExportLine(String scale, LocalDateTime time) {
    this.time = time;
    set("scale", scale);
    set("time", time.toString().length() == 16 ? time + ":00" : time.toString());
  }

  ExportLine set(String column, String value) {
    cells.put(column, value);
    return this;
  }

  String get(String column) {
    return cells.getOrDefault(column, "");
  }

  ExportLine copy() {
    var copy = new ExportLine(get("scale"), time);
    copy.cells.putAll(cells);
    return copy;
  }

  ExportLine at(LocalDateTime other) {
    var moved = copy();
    var fresh = new ExportLine(get("scale"), other);
    moved.cells.remove("time");
    fresh.cells.putAll(moved.cells);
    return fresh;
  }
}
