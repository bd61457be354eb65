package gambrel.pages.owner.month;

import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Cell;
import gambrel.pages.views.TableView.Row;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/**
 * Builds a table from columns and rows. A column has a head, a function that prints its cells of a
 * row, and classes of its head alone, such as its width. Columns are added first, rows after.
 *
 * @param <R> what one row is about
 */
final class TableBuilder<R> {
  static final String FIRST = "first";
  static final String NUMBER = "number";

  private final String classes;
  private final List<List<Cell>> headsAbove = new ArrayList<>();
  private final List<Cell> heads = new ArrayList<>();
  private final List<Function<R, List<Cell>>> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /** A table without columns; the first of its classes in {@code page.css} is its name. */
  TableBuilder(String classes) {
    this.classes = classes;
  }

  /**
   * A figure and the number of bodies that it is computed from.
   *
   * @param text the figure; empty if unknown
   * @param bodies the number of bodies, in words; may be empty
   */
  record Counted(String text, String bodies) {
    static final Counted NONE = new Counted("", "");

    /** The two cells of the figure; {@code more} are further classes of the first. */
    List<Cell> cells(String more) {
      return List.of(new Cell(text, NUMBER + more), new Cell(bodies, "number counted"));
    }
  }

  /** Adds the first column, which names the row. */
  TableBuilder<R> first(String head, Function<R, String> text, String... ofHead) {
    return column(head, FIRST, text, ofHead);
  }

  /** Adds a column of words. */
  TableBuilder<R> words(String head, Function<R, String> text, String... ofHead) {
    return column(head, "", text, ofHead);
  }

  /** Adds a column of figures. */
  TableBuilder<R> number(String head, Function<R, String> text, String... ofHead) {
    return column(head, NUMBER, text, ofHead);
  }

  /** Adds two columns under one head: a figure and its number of bodies. */
  TableBuilder<R> counted(String head, Function<R, Counted> figure) {
    return column(new Cell(head, NUMBER, 2), row -> figure.apply(row).cells(""));
  }

  /** Adds a column whose head and cells have {@code classes}. */
  TableBuilder<R> column(String head, String classes, Function<R, String> text, String... ofHead) {
    String classesOfHead = (classes + ' ' + String.join(" ", ofHead)).strip();
    return column(
        new Cell(head, classesOfHead), row -> List.of(new Cell(text.apply(row), classes)));
  }

  /** Adds as many columns as {@code head} spans. */
  TableBuilder<R> column(Cell head, Function<R, List<Cell>> cells) {
    heads.add(head);
    columns.add(cells);
    return this;
  }

  /** Adds a line of heads above the heads of the columns. */
  TableBuilder<R> headsAbove(List<Cell> line) {
    headsAbove.add(line);
    return this;
  }

  /** Adds rows. */
  TableBuilder<R> rows(Collection<? extends R> all) {
    all.forEach(row -> row("", row));
    return this;
  }

  /** Adds a row with classes of its own. */
  TableBuilder<R> row(String classes, R row) {
    return add(classes, cells(row));
  }

  /** Adds a row of given cells. */
  TableBuilder<R> add(String classes, List<Cell> cells) {
    rows.add(new Row(classes, cells));
    return this;
  }

  /** Adds rows below a title; without rows no title either. */
  TableBuilder<R> group(String title, Collection<R> all) {
    return all.isEmpty() ? this : add("group", List.of(new Cell(title, FIRST, width()))).rows(all);
  }

  private List<Cell> cells(R row) {
    return columns.stream().flatMap(column -> column.apply(row).stream()).toList();
  }

  private int width() {
    return heads.stream()
        .mapToInt(head -> head.span().isEmpty() ? 1 : Integer.parseInt(head.span()))
        .sum();
  }

  /** The table with remarks below it; none without rows. */
  List<TableView> table(String... remarks) {
    return table(List.of(remarks));
  }

  /** The table with remarks below it; none without rows. */
  List<TableView> table(List<String> remarks) {
    var lines = new ArrayList<>(headsAbove);
    if (heads.stream().anyMatch(cell -> !cell.text().isEmpty())) {
      lines.add(heads);
    }
    return rows.isEmpty() ? List.of() : List.of(new TableView(classes, lines, rows, remarks));
  }
}
