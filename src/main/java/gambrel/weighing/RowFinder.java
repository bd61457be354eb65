package gambrel.weighing;

import gambrel.notice.Place;
import java.lang.ref.SoftReference;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds rows of the exports by their place; a file is read when a row of it is wanted. */
public final class RowFinder {
  private final Map<String, ExportFile> files;
  private final Map<String, SoftReference<Map<Integer, ExportRow>>> read = new HashMap<>();

  /** For the files of a shop. */
  public RowFinder(List<ExportFile> files) {
    this.files = files.stream().collect(Collectors.toMap(ExportFile::path, Function.identity()));
  }

  /** The row that begins at a place, as it stands there. */
  public Optional<ExportRow> find(Place place) {
    return Optional.ofNullable(byLine(place.file()).get(place.line()));
  }

  /** Every row, in no particular order. */
  public Stream<ExportRow> all() {
    return files.values().stream().flatMap(file -> file.rows().stream());
  }

  private Map<Integer, ExportRow> byLine(String path) {
    var known = read.get(path);
    var rows = known == null ? null : known.get();
    if (rows == null) {
      var file = files.get(path);
      rows =
          file == null
              ? Map.of()
              : file.rows().stream()
                  .collect(Collectors.toMap(row -> row.place().line(), Function.identity()));
      read.put(path, new SoftReference<>(rows));
    }
    return rows;
  }
}
