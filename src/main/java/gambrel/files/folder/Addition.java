package gambrel.files.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;

/**
 * Lines to be put at the end of a file of the shop folder.
 *
 * @param file its path relative to the shop folder; a layout that is not there begins with them
 * @param columns the columns that the lines fill, parted by commas; empty for a layout
 * @param lines the lines; of a table each is a row
 * @param finish how a person finishes the rows, each of which has a blank for that; empty if they
 *     are ready
 */
public record Addition(String file, String columns, List<String> lines, String finish) {
  /** Lines of a layout. */
  public static Addition toLayout(String file, List<String> lines) {
    return new Addition(file, "", lines, "");
  }

  /** Whether the lines are rows of a table. */
  public boolean isOfTable() {
    return !columns.isEmpty();
  }

  /**
   * Puts the lines at the end of the file. It does nothing, and returns false, if the file is an
   * export's own, or is a table whose header does not begin with the columns.
   */
  public boolean saveIn(Path folder) throws IOException {
    var path = folder.resolve(file);
    String before = Files.exists(path) ? Files.readString(path, StandardCharsets.ISO_8859_1) : "";
    if (file.startsWith("exports/") || !hasColumns(before)) {
      return false;
    }
    String start =
        (before.isEmpty() || before.endsWith("\n") ? "" : "\n")
            + (finish.isEmpty() ? "" : "# " + finish + '\n');
    Files.createDirectories(path.getParent());
    Files.writeString(
        path,
        start + String.join("\n", lines) + '\n',
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
    return true;
  }

  private boolean hasColumns(String table) {
    String header = table.lines().findFirst().orElse("").toLowerCase(Locale.ROOT);
    return (header.replaceAll("[^a-z,]", "") + ',').startsWith(columns + ',') || !isOfTable();
  }
}
