package gambrel.trade.rows;

import gambrel.trade.notice.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rows of exports as texts by field; a field that is absent or blank has no entry. */
public final class RowCells {
  private RowCells() {}

  /** A sound row. */
  public static ExportRow row(
      Place place, Map<Field, String> cells, Optional<ExportRow.Identity> identity, String raw) {
    var values = Stream.of(Field.values()).map(field -> cells.getOrDefault(field, "")).toList();
    return new ExportRow(
        place, values, Optional.empty(), identity, Optional.empty(), raw, List.of(), Map.of());
  }

  /** The texts of a row. */
  public static Map<Field, String> of(ExportRow row) {
    return Stream.of(Field.values())
        .filter(field -> !row.values().get(field.ordinal()).isEmpty())
        .collect(Collectors.toMap(field -> field, field -> row.values().get(field.ordinal())));
  }
}
