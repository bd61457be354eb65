package gambrel.files.csv;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * The first line of a delimited file.
 *
 * @param delimiter the character between cells
 * @param names its cells, stripped; blank where the file has no header line
 * @param row the line itself
 * @param next index of the first line that may be a row
 */
public record Header(char delimiter, List<String> names, CsvRow row, int next) {

  /**
   * The first line that is not blank, taken apart by each delimiter of {@code form}; the one with
   * the highest score is returned. Empty if all lines are blank. If files of this form have no
   * header line, the first row gives the number of columns.
   */
  public static Optional<Header> find(
      List<TextLine> lines, TextForm form, ToLongFunction<Header> score) {
    int start = 0;
    while (start < lines.size() && lines.get(start).isBlank()) {
      start++;
    }
    if (start == lines.size()) {
      return Optional.empty();
    }
    Header best = null;
    long highest = -1;
    var scored = new HashSet<List<String>>();
    for (char delimiter : form.delimiters()) {
      var header = at(start, lines, delimiter, form);
      long its = scored.add(header.names()) ? score.applyAsLong(header) : -1;
      if (its > highest) {
        best = header;
        highest = its;
      }
    }
    return Optional.of(best);
  }

  private static Header at(int start, List<TextLine> lines, char delimiter, TextForm form) {
    var found = new CsvRows(lines, delimiter, form.quote(), 1, Integer.MAX_VALUE).at(start);
    var names =
        found.row().cells().stream().map(cell -> form.header() ? cell.strip() : "").toList();
    return new Header(delimiter, names, found.row(), form.header() ? found.next() : start);
  }

  /** A column's name as it is compared. */
  public static String name(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  /** Number of columns. */
  public int width() {
    return names.size();
  }

  /** The index of each column by its compared name; of two with the same name the first. */
  public Map<String, Integer> positions() {
    var positions = new HashMap<String, Integer>();
    for (int i = 0; i < names.size(); i++) {
      positions.putIfAbsent(name(names.get(i)), i);
    }
    return positions;
  }

  /** The columns of {@code known}, as they are compared, that stand in the header twice. */
  public List<String> twice(Collection<String> known) {
    var compared = names.stream().map(Header::name).toList();
    return known.stream()
        .filter(name -> compared.indexOf(name) != compared.lastIndexOf(name))
        .toList();
  }
}
