package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.CsvRow;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.IdIndex;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** One row of a file of the shop folder, which says itself what is wrong with it. */
final class ShopRow {
  /** A row that is left out; never leaves this package. */
  static final class RowRefused extends RuntimeException {
    private final transient Notice notice;

    private RowRefused(Notice notice) {
      super(notice.saying().key(), null, false, false);
      this.notice = notice;
    }

    Notice notice() {
      return notice;
    }
  }

  private final Place place;
  private final CsvRow row;
  private final Map<String, Integer> positions;
  private final CellTypes formats;
  private final Consumer<Notice> notices;
  private String body = "";

  ShopRow(
      Place place,
      CsvRow row,
      Map<String, Integer> positions,
      CellTypes formats,
      Consumer<Notice> notices) {
    this.place = place;
    this.row = row;
    this.positions = positions;
    this.formats = formats;
    this.notices = notices;
  }

  /** This row; refuses it if it is broken as text. */
  ShopRow checked() {
    if (row.broken().isPresent()) {
      throw new RowRefused(
          notice(NoticeCode.SHOP_ROW_BAD, "BROKEN").with("fault", row.broken().get()));
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
      throw new RowRefused(notice(NoticeCode.SHOP_ROW_BAD, "BLANK").with("column", column));
    }
    return text;
  }

  /** The value of a cell, or empty if it is blank; a bad one refuses the row. */
  <T> Optional<T> get(String column, CellType<T> type) {
    String text = text(column);
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(type.read(formats, text));
    } catch (BadCell e) {
      throw refuse(column, e);
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
      notices.accept(plain ? e.notice().advising("READ_AS_BLANK") : e.notice());
      return Optional.empty();
    }
  }

  /** An id that the file defines here and that is not yet among {@code taken}. */
  String newId(String column, Set<String> taken) {
    String id = need(column, CellTypes::id);
    if (taken.contains(id)) {
      throw refuse(NoticeCode.ID_TWICE, column, id);
    }
    return id;
  }

  /**
   * An id that another file defines, or empty if the cell is blank. One that fits without zeros is
   * taken as it is defined there, with a note; an unknown or damaged one refuses the row.
   */
  Optional<String> known(String column, IdIndex index) {
    var id = get(column, CellTypes::id);
    if (id.isPresent() && index.find(id.get()).isEmpty()) {
      throw refuse(NoticeCode.REFERENCE_UNKNOWN, "LEFT_OUT", column, id.get());
    }
    return id.map(given -> resolved(column, index.find(given).orElseThrow()));
  }

  /** As {@link #known}, but an unknown or damaged id is kept as it stands, with a notice. */
  String knownOrKept(String column, IdIndex index) {
    String given = text(column).replaceAll("\\p{Cntrl}", "");
    if (given.isEmpty() || kindly(column, CellTypes::id).isEmpty()) {
      return given;
    }
    var match = index.find(given);
    if (match.isEmpty()) {
      notices.accept(cell(Notice.of(NoticeCode.REFERENCE_UNKNOWN, place), column, text(column)));
      return given;
    }
    return resolved(column, match.get());
  }

  /** Refuses the row if its last day is before its first. */
  void checkPeriod(Optional<LocalDate> from, Optional<LocalDate> to) {
    if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      throw refuse(NoticeCode.SHOP_ROW_BAD, "TO_BEFORE_FROM");
    }
  }

  /** Adds a notice about the row, which is used all the same. */
  void mark(NoticeCode code, String variant, String name, String value) {
    notices.accept(notice(code, variant).with(name, value));
  }

  /** The row is left out for this reason; to be thrown. */
  RowRefused refuse(NoticeCode code, String variant) {
    return new RowRefused(notice(code, variant));
  }

  /** The row is left out for what stands in a cell; to be thrown. */
  RowRefused refuse(NoticeCode code, String variant, String column, String cell) {
    return new RowRefused(cell(Notice.of(code, variant, place), column, cell));
  }

  /** The row is left out for what stands in a cell; to be thrown. */
  RowRefused refuse(NoticeCode code, String column, String cell) {
    return new RowRefused(cell(Notice.of(code, place), column, cell));
  }

  /** The row is left out for a cell that cannot be read; to be thrown. */
  RowRefused refuse(String column, BadCell bad) {
    return new RowRefused(
        cell(Notice.of(bad.code(), place), column, text(column)).with("why", bad.why()));
  }

  private String resolved(String column, IdIndex.Match match) {
    if (!match.exact()) {
      notices.accept(
          cell(Notice.of(NoticeCode.ID_ZEROS, "CELL", place), column, text(column))
              .with("id", match.id()));
    }
    return match.id();
  }

  private Notice notice(NoticeCode code, String variant) {
    return about(Notice.of(code, variant, place));
  }

  private Notice cell(Notice notice, String column, String cell) {
    return about(notice).with("column", column).with("cell", cell);
  }

  private Notice about(Notice notice) {
    return notice.aboutBody(body).quoting(row.raw());
  }
}
