package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.export.CountedLines;
import gambrel.files.export.ExportReader;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Exports of a folder as a layout reads them.
 *
 * @param rows the rows of all files
 * @param fault why one of the files cannot be read
 * @param names the columns' names in the first file
 * @param positions the index of each column that is read
 * @param records the records of all files
 * @param above the columns that lines above the rows give
 */
record AsRead(
    List<ExportRow> rows,
    Optional<String> fault,
    List<String> names,
    Map<String, Integer> positions,
    List<CsvRow> records,
    Set<String> above) {
  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}.*");
  private static final Set<Field> WEIGHTS = EnumSet.of(Field.NET, Field.GROSS, Field.TARE);
  private static final Pattern STATUS = Pattern.compile("(?i)|ok|void(:.+)?");

  /** Reads files by a layout. */
  static AsRead of(Path folder, List<String> paths, Layouts.Choice choice) throws IOException {
    var rows = new ArrayList<ExportRow>();
    var faults = new ArrayList<Notice>();
    for (String path : paths) {
      var exports = ExportReader.read(folder, path, choice);
      exports.files().forEach(file -> rows.addAll(file.rows()));
      exports.notices().stream()
          .filter(notice -> notice.code().name().startsWith("EXPORT_UN"))
          .forEach(faults::add);
    }
    var fault = faults.stream().findFirst().map(NoticeWords.ENGLISH::message);
    var names = new ArrayList<String>();
    var positions = new HashMap<String, Integer>();
    var records = new ArrayList<CsvRow>();
    for (String path : paths) {
      read(folder.resolve(path), choice.layout(), names, positions, records);
    }
    var above = choice.layout().text().above().keySet();
    return new AsRead(rows, fault, names, positions, records, above);
  }

  /** Adds the records of a file, and of the first one the columns. */
  private static void read(
      Path file,
      Layout layout,
      List<String> names,
      Map<String, Integer> positions,
      List<CsvRow> records)
      throws IOException {
    try (var in = Files.newInputStream(file)) {
      var form = layout.text();
      var lines = CountedLines.read(in, form).lines();
      var found = Header.find(lines, form, header -> layout.positions(header).size());
      if (found.isPresent()) {
        var header = found.get();
        if (names.isEmpty()) {
          names.addAll(header.names());
          positions.putAll(layout.positions(header));
        }
        var csv = new CsvRows(lines, header.delimiter(), form.quote(), 1, Integer.MAX_VALUE);
        records.addAll(csv.all(header.next()));
      }
    }
  }

  /** The row that stands at a place of the files; empty if it is no row by the layout. */
  Optional<ExportRow> row(GuessTable.Row at) {
    var place = new Place(at.file(), at.csv().line());
    return rows.stream().filter(row -> row.place().equals(place)).findFirst();
  }

  /** The weights of rows that have one: net, else gross. */
  static List<BigDecimal> weights(List<ExportRow> rows) {
    return rows.stream()
        .map(row -> row.get(row.get(Field.NET).isEmpty() ? Field.GROSS : Field.NET))
        .flatMap(text -> DecimalText.of(text).stream())
        .toList();
  }

  /** What of a row cannot be read; empty if all can. */
  static Optional<String> problem(ExportRow row) {
    return row.broken()
        .map(NoticeWords.ENGLISH::of)
        .or(
            () ->
                Stream.of(Field.values())
                    .filter(field -> isUnreadable(field, row))
                    .findFirst()
                    .map(field -> cell(field, row) + " cannot be read"))
        .or(
            () ->
                Optional.of("it has no weight")
                    .filter(why -> row.get(Field.NET).isEmpty() && row.get(Field.GROSS).isEmpty())
                    .filter(why -> !isVoid(row)));
  }

  /**
   * Whether a row cancels its ticket: then its weight does not matter, such as that of overload.
   */
  static boolean isVoid(ExportRow row) {
    return row.get(Field.STATUS).toLowerCase(Locale.ROOT).startsWith("void");
  }

  private static boolean isUnreadable(Field field, ExportRow row) {
    String text = row.get(field);
    if (isVoid(row) && WEIGHTS.contains(field)) {
      return false;
    }
    return switch (field) {
      case TIME -> !TIME.matcher(text).matches();
      case NET, GROSS, TARE, PIECES -> !text.isEmpty() && DecimalText.of(text).isEmpty();
      case STATUS -> !STATUS.matcher(text).matches();
      case UNIT -> !text.isEmpty() && WeightUnit.of(text).isEmpty();
      default -> false;
    };
  }

  /** A cell in a sentence. */
  static String cell(Field field, ExportRow row) {
    String text =
        row.quoted(field) instanceof Phrase why ? NoticeWords.ENGLISH.of(why) : row.get(field);
    return field.name().toLowerCase(Locale.ROOT) + ' ' + (text.isEmpty() ? "(blank)" : text);
  }

  /** Whether all files can be read, and every row of them. */
  boolean isRight() {
    return fault.isEmpty() && rows.stream().allMatch(row -> problem(row).isEmpty());
  }

  /** Whether some file cannot be read at all, or no row of them. */
  boolean isWrong() {
    return fault.isPresent()
        || !rows.isEmpty() && rows.stream().noneMatch(row -> problem(row).isEmpty());
  }
}
