package gambrel.files.guess;

import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.guess.GuessTable.Column;
import gambrel.files.guess.GuessTable.Row;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds what lines that are no rows, and the names of the files, give the rows below them.
 *
 * @param files the exports
 * @param rows their rows
 */
record LinesAbove(List<SampleFile> files, List<Row> rows) {
  /** The characters that mean something else in a regular expression, but for the backslash. */
  private static final String SIGNS = "[.\\[\\]{}()*+?^$|/#&-]";

  private static final Pattern BEGINNING = Pattern.compile("[^\\p{L}]*\\p{L}+");

  /** The expression of a line that only rules off others. */
  private static final String RULE = "[^\\p{L}\\d]+$";

  /** What may follow the beginning of a line that says something of the rows below. */
  private static final List<String> HEADS =
      List.of(
          "[^\\p{L}\\d]*([\\p{L}\\d./:_-]*)",
          ".*?[:=#]\\s*([\\p{L}\\d./:_-]*)",
          ".*\\s([\\p{L}\\d][\\p{L}\\d./:_-]*)[^\\p{L}\\d]*$");

  /** What may be a date in the name of a file. */
  private static final Pattern IN_NAME =
      Pattern.compile("(?<!\\d)(\\d{8}|\\d{6}|\\d{1,4}([-_.])\\d{1,2}\\2\\d{1,4})(?!\\d)");

  /** An expression for the beginning of a line, up to its first word. */
  static String expression(String raw) {
    var word = BEGINNING.matcher(raw.strip());
    return whole(word.lookingAt() ? word.group() : raw);
  }

  /** An expression for a whole line, with any digits and blanks in place of its own. */
  static String whole(String raw) {
    return TableForm.isRule(raw.strip())
        ? RULE
        : raw.strip()
            .replace("\\", "\\W")
            .replaceAll(SIGNS, "\\\\$0")
            .replaceAll("\\d+", "\\\\d+")
            .replaceAll("\\s+", "\\\\s+");
  }

  /**
   * What lines and names give, each as a column.
   *
   * @param header the header line, which gives nothing; empty if there is none
   */
  List<Column> heads(String header) {
    var isRow = new HashSet<Place>();
    rows.forEach(row -> isRow.add(new Place(row.file(), row.csv().line())));
    var expressions = new LinkedHashMap<String, String>();
    for (var file : files) {
      for (var line : file.lines()) {
        boolean free = !isRow.contains(new Place(file.path(), line.number()));
        if (free && line.text().matches(".*\\p{L}.*") && !line.text().equals(header)) {
          HEADS.forEach(
              rest ->
                  expressions.putIfAbsent(
                      "^\\s*" + expression(line.text()) + rest, firstWord(line.text())));
        }
      }
    }
    var heads = new ArrayList<Column>();
    expressions.forEach(
        (expression, word) ->
            given(Pattern.compile(expression))
                .ifPresent(cells -> heads.add(new Column(0, word, "", "", cells, expression))));
    var names = rows.stream().map(row -> IN_NAME.matcher(nameOf(row.file()))).toList();
    if (!names.isEmpty() && names.stream().allMatch(Matcher::find)) {
      heads.add(
          new Column(0, "", "", "", names.stream().map(Matcher::group).toList(), Column.NAME));
    }
    return heads;
  }

  private static String nameOf(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  private static String firstWord(String line) {
    return line.replaceAll("^[^\\p{L}]+|(?<=\\p{L})[^\\p{L}].*$", "");
  }

  /** By row what the nearest line above it gives; empty if a row has no such line above it. */
  private Optional<List<String>> given(Pattern expression) {
    var byFile = new HashMap<String, TreeMap<Integer, String>>();
    for (var file : files) {
      var given = byFile.computeIfAbsent(file.path(), path -> new TreeMap<>());
      for (var line : file.lines()) {
        var found = expression.matcher(line.text());
        if (found.find()) {
          given.put(line.number(), found.group(1));
        }
      }
    }
    var cells =
        rows.stream()
            .map(row -> byFile.get(row.file()).floorEntry(row.csv().line()))
            .map(above -> above == null ? "" : above.getValue())
            .toList();
    return Optional.of(cells).filter(all -> !all.contains(""));
  }
}
