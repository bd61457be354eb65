package gambrel.damage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A slip in one file.
 *
 * @param kind what kind of slip
 * @param before the table as it should be
 * @param after the table as it was typed
 * @param row the row that it happened in, from 0
 * @param column the column that it happened in, from 0
 */
record Mistake(Mistyping kind, TypedTable before, TypedTable after, int row, int column) {
  /**
   * A row that means something else than before.
   *
   * @param line its line in the file
   * @param row its place among the rows
   * @param before its cells by known column, as they should be
   * @param after its cells by known column, as they were typed
   * @param tooLong whether it has more cells than the header
   */
  record ChangedRow(
      int line, int row, Map<String, String> before, Map<String, String> after, boolean tooLong) {}

  /** The rows that are changed; none if rows came or went. */
  List<ChangedRow> changes() {
    if (after.rows().size() != before.rows().size()) {
      return List.of();
    }
    var columns = ShopColumns.of(before.file());
    var was = columns.read(before.header()).places();
    var is = columns.read(after.header()).places();
    var changed = new ArrayList<ChangedRow>();
    for (int i = 0; i < before.rows().size(); i++) {
      var cells = after.rows().get(i);
      boolean tooLong =
          cells.size() > after.header().size()
              && cells.subList(after.header().size(), cells.size()).stream()
                  .anyMatch(cell -> !cell.isBlank());
      var old = cells(before, i, was);
      var typed = cells(after, i, is);
      if (tooLong || !old.equals(typed)) {
        changed.add(new ChangedRow(after.line(i), i, old, typed, tooLong));
      }
    }
    return changed;
  }

  private static Map<String, String> cells(TypedTable table, int row, Map<String, Integer> places) {
    var cells = new LinkedHashMap<String, String>();
    places.forEach(
        (column, place) -> {
          if (!table.cell(row, place).isBlank()) {
            cells.put(column, table.cell(row, place).strip());
          }
        });
    return cells;
  }

  /** The table as it should be, but for some rows, which are as they were typed. */
  TypedTable only(List<ChangedRow> typed) {
    var table = before;
    for (var change : typed) {
      var row =
          before.header().stream().map(name -> change.after().getOrDefault(name, "")).toList();
      table = table.withRow(change.row(), row);
    }
    return table;
  }

  @Override
  public String toString() {
    var text = new StringBuilder(before.file()).append(' ').append(kind).append(": ");
    if (kind.where() == Mistyping.Where.NAME && !before.settings()) {
      return text.append(before.header()).append(" -> ").append(after.header()).toString();
    }
    if (kind.where() == Mistyping.Where.FILE) {
      return text.append("whole file").toString();
    }
    text.append("line ").append(before.line(row)).append(' ');
    if (kind.where() == Mistyping.Where.CELL && !before.settings()) {
      text.append(before.header().get(column)).append(' ');
    }
    text.append(before.rows().get(row));
    if (after.rows().size() == before.rows().size()) {
      text.append(" -> ").append(after.rows().get(row));
    }
    return text.toString();
  }
}
