package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.CsvRow;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.UnreadRow;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * One row of a table of the shop folder. Its methods read single cells; a cell that cannot be read
 * either refuses the whole row or adds a notice.
 */
final class ShopRow {
  /** A row that is left out. */
  static final class RowRefused extends RuntimeException {
    private final transient Notice notice;
    private final boolean unread;

    private RowRefused(Notice notice, boolean unread) {
      super(notice.saying().key(), null, false, false);
      this.notice = notice;
      this.unread = unread;
    }
  }

  private final Place place;
  private final CsvRow row;
  private final boolean overfull;
  private final Map<String, Integer> positions;
  private final CellTypes types;
  private final ShopFolder folder;
  private String body = "";
  private Optional<Notice> fault = Optional.empty();

  /**
   * A row.
   *
   * @param place file and line
   * @param overfull whether it has more cells than the header
   * @param positions the index of each known column
   * @param folder receives what is wrong with the row
   */
  ShopRow(
      Place place,
      CsvRow row,
      boolean overfull,
      Map<String, Integer> positions,
      CellTypes types,
      ShopFolder folder) {
    this.place = place;
    this.row = row;
    this.overfull = overfull;
    this.positions = positions;
    this.types = types;
    this.folder = folder;
  }

  /** Returns this row; refuses it if it is broken as text. */
  ShopRow checked() {
    if (row.broken().isPresent()) {
      throw refuse(broken());
    }
    return this;
  }

  /** Returns this row; adds a notice if it is broken as text, and its other cells are read. */
  ShopRow evenBroken() {
    if (row.broken().isPresent()) {
      addFault(broken());
    }
    return this;
  }

  private Notice broken() {
    return bad("BROKEN").with("fault", row.broken().orElseThrow());
  }

  /** Adds the notice of a refusal. */
  void refused(RowRefused refusal) {
    if (refusal.unread) {
      addFault(refusal.notice);
    } else {
      mark(refusal.notice);
    }
  }

  /** Adds the notice of a fault for which the row counts as unread. */
  void addFault(Notice notice) {
    if (fault.isPresent() && row.broken().isPresent()) {
      return;
    }
    if (fault.isEmpty()) {
      folder.addUnread(this);
      fault = Optional.of(notice);
    }
    if (!UnreadRow.holds(place.file())) {
      mark(notice);
    } else {
      var holding = notice.as(Severity.HOLD);
      mark(notice.code() == NoticeCode.SHOP_ROW_BAD ? holding.advising("UNREAD") : holding);
    }
  }

  /** Whether a row of {@code cuts.csv} that cannot be read names an item. */
  boolean isUnreadItem(String item) {
    return folder.unread().stream()
        .filter(other -> other.place.file().equals("cuts.csv"))
        .anyMatch(other -> other.legible("item", CellTypes::item).equals(Optional.of(item)));
  }

  /** Why the row counts as unread. */
  Optional<Notice> fault() {
    return fault;
  }

  /** Whether the row has more cells than the header, so that none may stand in its place. */
  boolean isOverfull() {
    return overfull;
  }

  /** File and line of the row. */
  Place place() {
    return place;
  }

  /** Names {@code body} in the notices that the row draws from now on. */
  void setBody(String body) {
    this.body = body;
  }

  /** The stripped text of a cell; empty if it is blank or illegible, or the column is missing. */
  String text(String column) {
    var position = positions.get(column);
    String cell = position == null ? "" : row.cell(position);
    return row.broken().isEmpty() || ShopFolder.isLegible(cell) ? cell : "";
  }

  /** The value of a cell; empty if it is blank or cannot be read, which draws no notice. */
  <T> Optional<T> legible(String column, BiFunction<CellTypes, String, T> type) {
    try {
      return get(column, type);
    } catch (RowRefused e) {
      return Optional.empty();
    }
  }

  /** The stripped text of a cell that must not be blank. */
  String needText(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      throw refuse(bad("BLANK").with("column", column));
    }
    return text;
  }

  /** The stripped text of a cell that should not be blank; a blank one draws a notice. */
  String text(String column, String otherwise) {
    try {
      return needText(column);
    } catch (RowRefused e) {
      addFault(e.notice);
      return otherwise;
    }
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
      addFault(plain ? e.notice.advising("READ_AS_BLANK") : e.notice);
      return Optional.empty();
    }
  }

  /** The id that the row defines; one that is among {@code taken} refuses the row. */
  String newId(String column, Set<String> taken) {
    String id = need(column, CellTypes::id);
    if (taken.contains(id)) {
      throw leaveOut(cell(Notice.of(NoticeCode.ID_TWICE, place), column, id));
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
      throw leaveOut(
          cell(Notice.of(NoticeCode.REFERENCE_UNKNOWN, "LEFT_OUT", place), column, id.get()));
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

  /** Adds a notice about the row. */
  void mark(Notice notice) {
    folder.add(notice.aboutBody(body).quoting(row.raw()));
  }

  /** A notice of a bad row for the reason {@code variant}, to be completed and added. */
  Notice bad(String variant) {
    return Notice.of(NoticeCode.SHOP_ROW_BAD, variant, place);
  }

  /** The exception that leaves the row out, since it cannot be read. */
  RowRefused refuse(Notice notice) {
    return new RowRefused(notice, true);
  }

  /** The exception that leaves out a row that can be read. */
  RowRefused leaveOut(Notice notice) {
    return new RowRefused(notice, false);
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

  /** A notice about a cell. */
  static Notice cell(Notice notice, String column, String cell) {
    return notice.with("column", column).with("cell", cell);
  }
}
