package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.CsvRow;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.UnreadRow;
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
    private final transient Notice notice;
    private final boolean unread;

    private RowRefused(Notice notice, boolean unread) {
      super(notice.saying().key(), null, false, false);
      this.notice = notice;
      this.unread = unread;
    }
  }

  private final ShopFolder folder;
  private final Place place;
  private final CsvRow row;
  private final boolean overfull;
  private final Map<String, Integer> positions;
  private final CellTypes types;
  private String body = "";
  private Optional<Notice> fault = Optional.empty();
  private Optional<Notice> leftOut = Optional.empty();

  /**
   * A row.
   *
   * @param folder receives what is wrong with the row
   * @param place file and line
   * @param overfull whether it has more cells than the header
   * @param positions the index of each known column
   */
  ShopRow(
      ShopFolder folder,
      Place place,
      CsvRow row,
      boolean overfull,
      Map<String, Integer> positions,
      CellTypes types) {
    this.folder = folder;
    this.place = place;
    this.row = row;
    this.overfull = overfull;
    this.positions = positions;
    this.types = types;
  }

  /**
   * Gives the row to {@code reader}; adds a notice if it is refused.
   *
   * @param evenBroken whether legible cells of a row that is broken as text are read all the same
   */
  void read(Consumer<ShopRow> reader, boolean evenBroken) {
    row.broken().ifPresent(broken -> addFault(bad("BROKEN").with("fault", broken)));
    if (row.broken().isEmpty() || evenBroken) {
      try {
        reader.accept(this);
        leftOut.ifPresent(folder::add);
      } catch (RowRefused refusal) {
        if (refusal.unread) {
          addFault(refusal.notice);
        } else {
          mark(refusal.notice);
        }
      }
    }
  }

  /**
   * Adds the notice of a fault for which the row counts as unread. Of a row that is broken as text
   * this is the only one.
   */
  void addFault(Notice notice) {
    addFault(notice, "");
  }

  private void addFault(Notice notice, String advice) {
    if (fault.isPresent() && row.broken().isPresent()) {
      return;
    }
    if (fault.isEmpty()) {
      folder.unread().add(this);
      fault = Optional.of(notice);
    }
    boolean holds = UnreadRow.holds(place.file());
    var marked = holds ? notice.as(Severity.HOLD) : notice;
    boolean plain = notice.code() == NoticeCode.SHOP_ROW_BAD;
    mark(plain ? marked.advising(holds ? "UNREAD" : advice) : marked);
  }

  /** Why the row counts as unread. */
  Optional<Notice> fault() {
    return fault;
  }

  /** File and line of the row. */
  Place place() {
    return place;
  }

  /** The columns whose cells stand in their places: none if there are more cells than columns. */
  Set<String> columns() {
    return overfull ? Set.of() : positions.keySet();
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

  /** The stripped text of a cell that must not be blank. */
  String needText(String column) {
    return need(column, (kinds, text) -> text);
  }

  /** The stripped text of a cell that should not be blank; a blank one draws a notice. */
  String text(String column, String otherwise) {
    if (text(column).isEmpty()) {
      addFault(blank(column).notice);
      return otherwise;
    }
    return text(column);
  }

  /** The value of a cell, or empty if it is blank; a bad one refuses the row. */
  <T> Optional<T> get(String column, BiFunction<CellTypes, String, T> type) {
    return get(
        column,
        type,
        bad -> {
          throw refuse(bad);
        });
  }

  /** The value of a cell that must not be blank; a bad one refuses the row. */
  <T> T need(String column, BiFunction<CellTypes, String, T> type) {
    return get(column, type).orElseThrow(() -> blank(column));
  }

  /** The value of a cell, or empty if it is blank or bad; a bad one draws a notice. */
  <T> Optional<T> getOrBlank(String column, BiFunction<CellTypes, String, T> type) {
    return get(column, type, bad -> addFault(bad, "READ_AS_BLANK"));
  }

  /** The value of a cell; empty if it is blank or cannot be read, which draws no notice. */
  <T> Optional<T> legible(String column, BiFunction<CellTypes, String, T> type) {
    return get(column, type, bad -> {});
  }

  private <T> Optional<T> get(
      String column, BiFunction<CellTypes, String, T> type, Consumer<Notice> ifBad) {
    String text = text(column);
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(type.apply(types, text));
    } catch (BadCell e) {
      ifBad.accept(cell(Notice.of(e.code(), place), column).with("why", e.why()));
      return Optional.empty();
    }
  }

  /**
   * An id of another file, or empty if the cell is blank. If it fits only without leading zeros,
   * the id of the other file is returned with a note. An unknown one is returned as it stands, and
   * the row is left out once its other cells are read. A damaged one refuses the row.
   */
  Optional<String> known(String column, IdIndex index) {
    var given = get(column, CellTypes::id);
    var found = given.flatMap(id -> resolved(column, index, id));
    if (given.isPresent() && found.isEmpty()) {
      leftOut = Optional.of(complete(unknown(column, ".LEFT_OUT")));
    }
    return found.or(() -> given);
  }

  /** Whether the row is left out, as it names what there is not. */
  boolean isLeftOut() {
    return leftOut.isPresent();
  }

  /** As {@link #known}, but the cell must not be blank. */
  String needKnown(String column, IdIndex index) {
    return known(column, index).orElseThrow(() -> blank(column));
  }

  /** As {@link #known}, but an unknown or damaged id is returned as it stands, with a notice. */
  String knownOrKept(String column, IdIndex index) {
    String given = text(column).replaceAll("\\p{Cntrl}", "");
    if (given.isEmpty() || getOrBlank(column, CellTypes::id).isEmpty()) {
      return given;
    }
    var id = resolved(column, index, given);
    if (id.isEmpty() && leftOut.isEmpty()) {
      mark(unknown(column, ""));
    }
    return id.orElse(given);
  }

  private Optional<String> resolved(String column, IdIndex index, String given) {
    var found = index.find(given);
    found
        .filter(id -> !id.equals(given))
        .map(id -> cell(Notice.of(NoticeCode.ID_ZEROS, "CELL", place), column).with("id", id))
        .ifPresent(this::mark);
    return found;
  }

  /** Refuses the row if {@code to} is before {@code from}. */
  <T extends Comparable<? super T>> void checkPeriod(Optional<T> from, Optional<T> to) {
    if (from.isPresent() && to.isPresent() && to.get().compareTo(from.get()) < 0) {
      throw refuse(bad("TO_BEFORE_FROM"));
    }
  }

  /** Adds a notice about the row, which counts as read. */
  void mark(Notice notice) {
    folder.add(complete(notice));
  }

  private Notice complete(Notice notice) {
    return notice.aboutBody(body).quoting(row.raw());
  }

  /** A notice of a bad row for the reason {@code variant}, to be completed and added. */
  Notice bad(String variant) {
    return Notice.of(NoticeCode.SHOP_ROW_BAD, variant, place);
  }

  /** A notice of a cell that names what there is not. */
  Notice unknown(String column, String variant) {
    var code = NoticeCode.REFERENCE_UNKNOWN;
    return cell(Notice.of(code, Phrase.of(code + variant), place), column);
  }

  /** The notice with the name and the text of a cell. */
  Notice cell(Notice notice, String column) {
    return notice.with("column", column).with("cell", text(column));
  }

  /** The exception that leaves the row out, since it cannot be read. */
  RowRefused refuse(Notice notice) {
    return new RowRefused(notice, true);
  }

  /** The exception that leaves out a row that can be read. */
  RowRefused leaveOut(Notice notice) {
    return new RowRefused(notice, false);
  }

  private RowRefused blank(String column) {
    return refuse(bad("BLANK").with("column", column));
  }
}
