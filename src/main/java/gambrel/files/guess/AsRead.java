package gambrel.files.guess;

import gambrel.files.export.ExportReader;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Exports of a folder as a layout reads them.
 *
 * @param layout the layout
 * @param rows the rows of all files
 * @param comparison which of them are void, repeats or set aside
 * @param written the rows that corrections change, by their places, as the exports have them
 * @param fault why one of the files cannot be read
 */
record AsRead(
    Layout layout,
    List<ReadRow> rows,
    RowComparison comparison,
    Map<Place, ExportRow> written,
    Optional<String> fault) {

  /** Reads files by a layout; {@code asOf} is the moment of the run. */
  static AsRead of(
      Path folder, List<String> paths, Layouts.Choice choice, Shop shop, OffsetDateTime asOf)
      throws IOException {
    var files = new ArrayList<ExportFile>();
    var faults = new ArrayList<Notice>();
    for (String path : paths) {
      var exports = ExportReader.read(folder, path, choice);
      files.addAll(exports.files());
      exports.notices().stream()
          .filter(notice -> notice.code().name().startsWith("EXPORT_UN"))
          .forEach(faults::add);
    }
    var corrected = CorrectedRows.of(files, shop, asOf);
    var rows = corrected.rows();
    var written = new HashMap<Place, ExportRow>();
    corrected.corrections().forEach(of -> written.putIfAbsent(of.row().place(), of.row()));
    return new AsRead(
        choice.layout(),
        rows,
        RowComparison.of(rows, asOf),
        written,
        faults.stream().findFirst().map(NoticeWords.ENGLISH::message));
  }

  /** The row that stands at a place of the files; empty if it is no row by the layout. */
  Optional<ReadRow> row(GuessTable.Row at) {
    var place = new Place(at.file(), at.csv().line());
    return rows.stream().filter(row -> row.place().equals(place)).findFirst();
  }

  /**
   * Whether a row counts: it can be used, and is no repeat, no row that only says that it repeats,
   * no void row and not what such a row cancels.
   */
  static boolean counts(ReadRow row, RowComparison comparison) {
    return comparison.disposition(row) == RowDisposition.USED
        && !row.status().isRepeat()
        && problem(row).isEmpty();
  }

  /** The other rows that a row cancels. */
  List<ReadRow> takenAwayBy(ReadRow row) {
    return rows.stream()
        .filter(other -> other != row)
        .filter(other -> comparison.cancelledBy(other).filter(by -> by == row).isPresent())
        .toList();
  }

  /** The weighings that are cancelled: by another row, or void rows that cancel no other. */
  List<ReadRow> cancelled() {
    var taking = new HashSet<ReadRow>();
    rows.forEach(row -> comparison.cancelledBy(row).filter(by -> by != row).ifPresent(taking::add));
    return rows.stream()
        .filter(row -> comparison.cancelledBy(row).isPresent() && !taking.contains(row))
        .toList();
  }

  /** The weight of a row: net, else gross; empty if it has none. */
  static Optional<BigDecimal> weight(ReadRow row) {
    return weight(row.row());
  }

  private static Optional<BigDecimal> weight(ExportRow row) {
    String net = row.get(Field.NET);
    return DecimalText.of(net.isEmpty() ? row.get(Field.GROSS) : net);
  }

  /** The weight of a row before any correction. */
  Optional<BigDecimal> written(ReadRow row) {
    return weight(written.getOrDefault(row.place(), row.row()));
  }

  /** The rows of bodies that count and have no tare, if nine of ten or more have one. */
  List<ReadRow> withoutTare() {
    var gross =
        rows.stream()
            .filter(row -> counts(row, comparison) && !row.row().get(Field.BODY).isEmpty())
            .filter(row -> !row.row().get(Field.GROSS).isEmpty())
            .toList();
    var without =
        gross.stream()
            .filter(
                r -> DecimalText.of(r.row().get(Field.TARE)).filter(t -> t.signum() != 0).isEmpty())
            .toList();
    return without.size() * 10 <= gross.size() ? without : List.of();
  }

  /** What of a row cannot be read; empty if all can, or if a correction removes the row. */
  static Optional<String> problem(ReadRow read) {
    var row = read.row();
    if (read.removed()) {
      return Optional.empty();
    }
    return row.broken()
        .map(NoticeWords.ENGLISH::of)
        .or(
            () ->
                Stream.of(Field.values())
                    .filter(field -> isUnreadable(field, read))
                    .findFirst()
                    .map(field -> cell(field, read) + " cannot be read"))
        .or(
            () ->
                Optional.of("it has no weight")
                    .filter(why -> row.get(Field.NET).isEmpty() && row.get(Field.GROSS).isEmpty())
                    .filter(why -> !read.status().isVoid()));
  }

  /** Whether a cell cannot be read; the weight of a row that cancels its ticket does not matter. */
  private static boolean isUnreadable(Field field, ReadRow read) {
    String text = read.row().get(field);
    boolean isNumber = text.isEmpty() || DecimalText.of(text).isPresent();
    return switch (field) {
      case TIME -> read.time().isEmpty();
      case NET, GROSS, TARE -> !isNumber && !read.status().isVoid();
      case PIECES -> !isNumber;
      case STATUS -> read.status().unknown().isPresent();
      case UNIT -> read.unit().isEmpty();
      default -> false;
    };
  }

  /** A cell in a sentence. */
  static String cell(Field field, ReadRow read) {
    var row = read.row();
    String text =
        row.quoted(field) instanceof Phrase why ? NoticeWords.ENGLISH.of(why) : row.get(field);
    return field.name().toLowerCase(Locale.ROOT) + ' ' + (text.isEmpty() ? "(blank)" : text);
  }

  /** Whether all files can be read, and every row of them but a few that may be typed wrong. */
  boolean isRight() {
    long wrong = rows.stream().filter(row -> problem(row).isPresent()).count();
    return fault.isEmpty() && wrong * GuessNumbers.ONE_WRONG_OF <= rows.size();
  }

  /** Whether some file cannot be read at all, or no row of them. */
  boolean isWrong() {
    return fault.isPresent()
        || !rows.isEmpty() && rows.stream().noneMatch(row -> problem(row).isEmpty());
  }
}
