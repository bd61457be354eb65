package gambrel.trade.rows;

import gambrel.trade.notice.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds rows of the exports by their place; a file is indexed at the first search in it. */
public final class RowFinder {
  private final List<ExportFile> files;
  private final Map<String, Map<Integer, ExportRow>> byLine = new HashMap<>();

  /** Searches {@code files}. */
  public RowFinder(List<ExportFile> files) {
    this.files = files;
  }

  /** The row that begins at a place, as the export has it; empty if none does. */
  public Optional<ExportRow> find(Place place) {
    return Optional.ofNullable(
        byLine.computeIfAbsent(place.file(), this::byLine).get(place.line()));
  }

  /** Every row, in the order of the exports. */
  public Stream<ExportRow> all() {
    return files.stream().flatMap(file -> file.rows().stream());
  }

  private Map<Integer, ExportRow> byLine(String path) {
    return files.stream()
        .filter(file -> file.path().equals(path))
        .flatMap(file -> file.rows().stream())
        .collect(Collectors.toMap(row -> row.place().line(), row -> row));
  }
}
