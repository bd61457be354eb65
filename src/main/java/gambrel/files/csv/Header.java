package gambrel.files.csv;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * The first line of a delimited file.
 *
 * @param delimiter what stands between cells
 * @param names its cells, stripped and in lower case; blank where the file has no header line
 * @param row the line itself
 * @param next index of the first line that may be a row
 */
public record Header(char delimiter, List<String> names, CsvRow row, int next) {

  /**
   * Finds the header: the first line that is not blank, taken apart by the delimiter of the form
   * with the highest score. Empty for a file of blank lines. Where files of this form have no
   * header line, the first row is taken for its number of columns.
   */
  public static Optional<Header> find(
      List<TextLine> lines, TextForm form, ToLongFunction<Header> score) {
    return form.delimiters().stream()
        .flatMap(delimiter -> at(lines, delimiter, form).stream())
        .reduce((best, other) -> score.applyAsLong(other) > score.applyAsLong(best) ? other : best);
  }

  private static Optional<Header> at(List<TextLine> lines, char delimiter, TextForm form) {
    int start = 0;
    while (start < lines.size() && lines.get(start).isBlank()) {
      start++;
    }
    if (start == lines.size()) {
      return Optional.empty();
    }
    var rows = new CsvRows(lines, delimiter, form.quote(), 1, Integer.MAX_VALUE);
    var row = rows.first(start);
    if (!form.header()) {
      var names = row.cells().stream().map(cell -> "").toList();
      return Optional.of(new Header(delimiter, names, row, start));
    }
    var names = row.cells().stream().map(Header::name).toList();
    return Optional.of(new Header(delimiter, names, row, rows.endOfFirst(start)));
  }

  /** A column's name as it is compared. */
  public static String name(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  /** How many of {@code known} are columns. */
  public long count(Collection<String> known) {
    return known.stream().filter(names::contains).count();
  }

  /** Number of columns. */
  public int width() {
    return names.size();
  }

  /** Where each column stands; of two with the same name the first. */
  public Map<String, Integer> positions() {
    var positions = new HashMap<String, Integer>();
    for (int i = 0; i < names.size(); i++) {
      positions.putIfAbsent(names.get(i), i);
    }
    return positions;
  }

  /** The columns of {@code known} that stand there twice. */
  public List<String> twice(Collection<String> known) {
    return known.stream().filter(name -> names.indexOf(name) != names.lastIndexOf(name)).toList();
  }
}
