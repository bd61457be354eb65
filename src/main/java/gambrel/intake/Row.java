package gambrel.intake;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.IdIndex;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** One row of a file of the shop folder, which says itself what is wrong with it. */
final class Row {
  private static final String LEFT_OUT = "Correct the row; it was left out.";
  private static final String READ_AS_BLANK =
      "Correct the cell that is named; it was read as blank.";

  /** A row that is left out; never leaves this package. */
  static final class RowRefused extends RuntimeException {
    private final transient Notice notice;

    private RowRefused(Notice notice) {
      super(notice.message(), null, false, false);
      this.notice = notice;
    }

    Notice notice() {
      return notice;
    }
  }

  private final Place place;
  private final CsvRow row;
  private final Map<String, Integer> positions;
  private final Formats formats;
  private final Consumer<Notice> notices;
  private String body = "";

  Row(
      Place place,
      CsvRow row,
      Map<String, Integer> positions,
      Formats formats,
      Consumer<Notice> notices) {
    this.place = place;
    this.row = row;
    this.positions = positions;
    this.formats = formats;
    this.notices = notices;
  }

  /** This row; refuses it if it is broken as text. */
  Row checked() {
    if (row.broken().isPresent()) {
      throw new RowRefused(notice(NoticeCode.SHOP_ROW_BAD, row.broken().get()).advising(LEFT_OUT));
    }
    return this;
  }

  /** Where the row stands. */
  Place place() {
    return place;
  }

  /** Later notices of the row are about this body. */
  void about(String body) {
    this.body = body;
  }

  /** The stripped text of a cell; empty if it is blank or the column is missing. */
  String text(String column) {
    var position = positions.get(column);
    return position == null ? "" : row.cell(position);
  }

  /** The stripped text of a cell that must not be blank. */
  String needText(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      throw refuse(NoticeCode.SHOP_ROW_BAD, column + " is blank");
    }
    return text;
  }

  /** The value of a cell, or empty if it is blank; a bad one refuses the row. */
  <T> Optional<T> get(String column, CellType<T> type) {
    String text = text(column);
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(type.read(formats, text));
    } catch (BadCell e) {
      throw new RowRefused(notice(e.code(), sentence(column, e)));
    }
  }

  /** The value of a cell that must not be blank; a bad one refuses the row. */
  <T> T need(String column, CellType<T> type) {
    needText(column);
    return get(column, type).orElseThrow();
  }

  /** The value of a cell, or empty if it is blank or bad; a bad one is a notice. */
  <T> Optional<T> kindly(String column, CellType<T> type) {
    try {
      return get(column, type);
    } catch (RowRefused e) {
      boolean plain = e.notice().code() == NoticeCode.SHOP_ROW_BAD;
      notices.accept(plain ? e.notice().advising(READ_AS_BLANK) : e.notice());
      return Optional.empty();
    }
  }

  /** An id that the file defines here and that is not yet among {@code taken}. */
  String newId(String column, Set<String> taken) {
    String id = need(column, Formats::id);
    if (taken.contains(id)) {
      throw refuse(NoticeCode.ID_TWICE, column + " " + quoted(id) + " stands there twice");
    }
    return id;
  }

  /**
   * An id that another file defines, or empty if the cell is blank. One that fits without zeros is
   * taken as it is defined there, with a note; an unknown or damaged one refuses the row.
   */
  Optional<String> known(String column, IdIndex index) {
    var id = get(column, Formats::id);
    if (id.isPresent() && index.find(id.get()).isEmpty()) {
      throw refuse(NoticeCode.REFERENCE_UNKNOWN, unknown(column) + "; the row was left out");
    }
    return id.map(given -> resolved(column, index.find(given).orElseThrow()));
  }

  /** As {@link #known}, but an unknown or damaged id is kept as it stands, with a notice. */
  String knownOrKept(String column, IdIndex index) {
    String given = text(column).replaceAll("\\p{Cntrl}", "");
    if (given.isEmpty() || kindly(column, Formats::id).isEmpty()) {
      return given;
    }
    var match = index.find(given);
    if (match.isEmpty()) {
      mark(NoticeCode.REFERENCE_UNKNOWN, unknown(column));
      return given;
    }
    return resolved(column, match.get());
  }

  /** Refuses the row if its last day is before its first. */
  void checkPeriod(Optional<LocalDate> from, Optional<LocalDate> to) {
    if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      throw refuse(NoticeCode.SHOP_ROW_BAD, "to is before from");
    }
  }

  /** Adds a notice about the row, which is used all the same. */
  void mark(NoticeCode code, String message) {
    notices.accept(notice(code, message));
  }

  /** The row is left out for this reason; to be thrown. */
  RowRefused refuse(NoticeCode code, String message) {
    return new RowRefused(notice(code, message));
  }

  private String resolved(String column, IdIndex.Match match) {
    if (!match.exact()) {
      mark(
          NoticeCode.ID_ZEROS,
          column + " " + quoted(text(column)) + " was taken for " + quoted(match.id()));
    }
    return match.id();
  }

  private String unknown(String column) {
    return column + " " + quoted(text(column)) + " is not known";
  }

  private Notice notice(NoticeCode code, String message) {
    return Notice.of(code, place, message).aboutBody(body).quoting(row.raw());
  }

  private String sentence(String column, BadCell bad) {
    return column + " " + quoted(text(column)) + " " + bad.getMessage();
  }

  private static String quoted(String text) {
    return '"' + text + '"';
  }
}
