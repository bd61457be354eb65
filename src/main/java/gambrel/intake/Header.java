package gambrel.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The first line of a delimited file.
 *
 * @param delimiter what stands between cells
 * @param names its cells, stripped and in lower case
 * @param row the line itself
 * @param next index of the first line after it
 */
record Header(char delimiter, List<String> names, CsvRow row, int next) {

  /**
   * Finds the header: the first line that is not blank, taken apart by the delimiter that lets most
   * of the {@code known} column names appear. Empty for a file of blank lines.
   */
  static Optional<Header> find(
      List<TextLine> lines, Collection<Character> delimiters, Collection<String> known) {
    int start = 0;
    while (start < lines.size() && lines.get(start).isBlank()) {
      start++;
    }
    if (start == lines.size()) {
      return Optional.empty();
    }
    Header best = null;
    for (char delimiter : delimiters) {
      var candidate = at(lines, start, delimiter);
      if (best == null || candidate.count(known) > best.count(known)) {
        best = candidate;
      }
    }
    return Optional.of(best);
  }

  private static Header at(List<TextLine> lines, int start, char delimiter) {
    var rows = new CsvRows(lines, delimiter, 1, Integer.MAX_VALUE);
    var row = rows.first(start);
    var names = row.cells().stream().map(c -> c.strip().toLowerCase(Locale.ROOT)).toList();
    return new Header(delimiter, names, row, rows.endOfFirst(start));
  }

  /** How many of {@code known} are columns. */
  long count(Collection<String> known) {
    return known.stream().filter(names::contains).count();
  }

  /** Number of columns. */
  int width() {
    return names.size();
  }

  /** Where each column stands; of two with the same name the first. */
  Map<String, Integer> positions() {
    var positions = new HashMap<String, Integer>();
    for (int i = 0; i < names.size(); i++) {
      positions.putIfAbsent(names.get(i), i);
    }
    return positions;
  }

  /** The columns of {@code known} that stand there twice. */
  List<String> twice(Collection<String> known) {
    var twice = new ArrayList<String>();
    for (var name : known) {
      if (names.indexOf(name) != names.lastIndexOf(name)) {
        twice.add(name);
      }
    }
    return twice;
  }
}
