package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.CsvRow;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.IdIndex;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * One row of a table of the shop folder. Its methods read single cells; a cell that cannot be read
 * either refuses the whole row or adds a notice.
 */
final class ShopRow {
  /** A row that is left out. */
  static final class RowRefused extends RuntimeException {
    /** Why the row is left out. */
    final transient Notice notice;

    private RowRefused(Notice notice) {
      super(notice.saying().key(), null, false, false);
      this.notice = notice;
    }
  }

  private final Place place;
  private final CsvRow row;
  private final Map<String, Integer> positions;
  private final CellTypes types;
  private final Consumer<Notice> notices;
  private String body = "";

  ShopRow(
      Place place,
      CsvRow row,
      Map<String, Integer> positions,
      CellTypes types,
      Consumer<Notice> notices) {
    this.place = place;
    this.row = row;
    this.positions = positions;
    this.types = types;
    this.notices = notices;
  }

  /** Returns this row; refuses it if it is broken as text. */
  ShopRow checked() {
    if (row.broken().isPresent()) {
      throw refuse(bad("BROKEN").with("fault", row.broken().get()));
    }
    return this;
  }

  /** File and line of the row. */
  Place place() {
    return place;
  }

  /** Names {@code body} in the notices that the row draws from now on. */
  void setBody(String body) {
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
      throw refuse(bad("BLANK").with("column", column));
    }
    return text;
  }

  /** The value of a cell, or empty if it is blank; a bad one refuses the row. */
  <T> Optional<T> get(String column, BiFunction<CellTypes, String, T> type) {
    String text = text(column);
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(type.apply(types, text));
    } catch (BadCell e) {
      throw refuse(column, e);
    }
  }

  /** The value of a cell that must not be blank; a bad one refuses the row. */
  <T> T need(String column, BiFunction<CellTypes, String, T> type) {
    needText(column);
    return get(column, type).orElseThrow();
  }

  /** The value of a cell, or empty if it is blank or bad; a bad one draws a notice. */
  <T> Optional<T> getOrBlank(String column, BiFunction<CellTypes, String, T> type) {
    try {
      return get(column, type);
    } catch (RowRefused e) {
      boolean plain = e.notice.code() == NoticeCode.SHOP_ROW_BAD;
      notices.accept(plain ? e.notice.advising("READ_AS_BLANK") : e.notice);
      return Optional.empty();
    }
  }

  /** The id that the row defines; one that is among {@code taken} refuses the row. */
  String newId(String column, Set<String> taken) {
    String id = need(column, CellTypes::id);
    if (taken.contains(id)) {
      throw refuse(NoticeCode.ID_TWICE, "", column, id);
    }
    return id;
  }

  /**
   * An id of another file, or empty if the cell is blank. If it fits only without leading zeros,
   * the id of the other file is returned with a note; an unknown or damaged one refuses the row.
   */
  Optional<String> known(String column, IdIndex index) {
    var id = get(column, CellTypes::id);
    if (id.isPresent() && index.find(id.get()).isEmpty()) {
      throw refuse(NoticeCode.REFERENCE_UNKNOWN, "LEFT_OUT", column, id.get());
    }
    return id.map(given -> resolved(column, index.find(given).orElseThrow()));
  }

  /** As {@link #known}, but the cell must not be blank. */
  String needKnown(String column, IdIndex index) {
    needText(column);
    return known(column, index).orElseThrow();
  }

  /** As {@link #known}, but an unknown or damaged id is returned as it stands, with a notice. */
  String knownOrKept(String column, IdIndex index) {
    String given = text(column).replaceAll("\\p{Cntrl}", "");
    if (given.isEmpty() || getOrBlank(column, CellTypes::id).isEmpty()) {
      return given;
    }
    var match = index.find(given);
    if (match.isEmpty()) {
      mark(cell(Notice.of(NoticeCode.REFERENCE_UNKNOWN, place), column, text(column)));
      return given;
    }
    return resolved(column, match.get());
  }

  /** Refuses the row if {@code to} is before {@code from}. */
  <T extends Comparable<? super T>> void checkPeriod(Optional<T> from, Optional<T> to) {
    if (from.isPresent() && to.isPresent() && to.get().compareTo(from.get()) < 0) {
      throw refuse(bad("TO_BEFORE_FROM"));
    }
  }

  /** Adds a notice about the row, which is used all the same. */
  void mark(Notice notice) {
    notices.accept(complete(notice));
  }

  /** A notice of a bad row for the reason {@code variant}, to be completed and added. */
  Notice bad(String variant) {
    return Notice.of(NoticeCode.SHOP_ROW_BAD, variant, place);
  }

  /** The exception that leaves the row out for the reason of {@code notice}. */
  RowRefused refuse(Notice notice) {
    return new RowRefused(complete(notice));
  }

  /** The exception that leaves the row out for the id in a cell. */
  RowRefused refuse(NoticeCode code, String variant, String column, String id) {
    var saying = Phrase.of(code.name() + (variant.isEmpty() ? "" : "." + variant));
    return refuse(cell(Notice.of(code, saying, place), column, id));
  }

  /** The exception that leaves the row out for a cell that cannot be read. */
  RowRefused refuse(String column, BadCell bad) {
    return refuse(cell(Notice.of(bad.code(), place), column, text(column)).with("why", bad.why()));
  }

  private String resolved(String column, IdIndex.Match match) {
    if (!match.exact()) {
      mark(
          cell(Notice.of(NoticeCode.ID_ZEROS, "CELL", place), column, text(column))
              .with("id", match.id()));
    }
    return match.id();
  }

  private static Notice cell(Notice notice, String column, String cell) {
    return notice.with("column", column).with("cell", cell);
  }

  private Notice complete(Notice notice) {
    return notice.aboutBody(body).quoting(row.raw());
  }
}
