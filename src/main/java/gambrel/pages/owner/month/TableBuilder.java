package gambrel.pages.owner.month;

import gambrel.pages.views.TableView;
import gambrel.pages.views.TableView.Body;
import gambrel.pages.views.TableView.Cell;
import gambrel.pages.views.TableView.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds a table column by column and row by row. A column has one cell in each row, or two: a
 * figure and of how many bodies it is.
 */
final class TableBuilder {
  static final String FIRST = "first";
  static final String NUMBER = "number";
  private static final String COUNTED = "number counted";

  private final String name;
  private final String style;
  private final List<List<Cell>> heads = new ArrayList<>();
  private final List<Cell> head = new ArrayList<>();
  private final List<String> columns = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();

  /**
   * A table.
   *
   * @param name its name, which is also a class of {@code page.css}
   * @param style its other classes, after {@code figures}
   */
  TableBuilder(String name, String style) {
    this.name = name;
    this.style = (name + " figures " + style).strip();
  }

  /**
   * A figure with how many bodies it is of.
   *
   * @param text the figure; empty if unknown
   * @param bodies how many bodies, in words; may be empty
   */
  record Counted(String text, String bodies) {
    static final Counted NONE = new Counted("", "");
  }

  /** The first column. */
  TableBuilder first(String text) {
    return column(text, FIRST, FIRST);
  }

  /** The first column, its head with more classes. */
  TableBuilder first(String text, String more) {
    return column(text, FIRST + ' ' + more, FIRST);
  }

  /** A column of words. */
  TableBuilder words(String text, String headStyle) {
    return column(text, headStyle, "");
  }

  /** A column of figures. */
  TableBuilder number(String text) {
    return column(text, NUMBER, NUMBER);
  }

  /** A column of figures, its head with more classes. */
  TableBuilder number(String text, String more) {
    return column(text, NUMBER + ' ' + more, NUMBER);
  }

  /** A column of {@link Counted} figures. */
  TableBuilder counted(String text) {
    return counted(text, "");
  }

  /** A column of {@link Counted} figures, its head with more classes. */
  TableBuilder counted(String text, String more) {
    head.add(new Cell(text, (NUMBER + ' ' + more).strip(), 2));
    columns.add(NUMBER);
    columns.add(COUNTED);
    return this;
  }

  /** A column with its own classes in the head and below it. */
  TableBuilder column(String text, String headStyle, String cellStyle) {
    head.add(new Cell(text, headStyle));
    columns.add(cellStyle);
    return this;
  }

  /** Begins a second line of heads over the same columns, which are named again. */
  TableBuilder nextHeads() {
    heads.add(List.copyOf(head));
    head.clear();
    columns.clear();
    return this;
  }

  /** A row: a text for each column, or a {@link Counted} for two. */
  void row(Object... values) {
    styled("", values);
  }

  /** A row with classes of its own. */
  void styled(String rowStyle, Object... values) {
    var cells = new ArrayList<Cell>();
    for (var value : values) {
      if (value instanceof Counted counted) {
        cells.add(new Cell(counted.text(), columns.get(cells.size())));
        cells.add(new Cell(counted.bodies(), columns.get(cells.size())));
      } else {
        cells.add(new Cell((String) value, columns.get(cells.size())));
      }
    }
    add(rowStyle, cells);
  }

  /** A row of given cells. */
  void add(String rowStyle, List<Cell> cells) {
    rows.add(new Row(rowStyle, cells));
  }

  /** The heading of the rows that follow. */
  void group(String title) {
    add("group", List.of(new Cell(title, FIRST, columns.size())));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  private List<List<Cell>> heads() {
    var all = new ArrayList<>(heads);
    if (head.stream().anyMatch(cell -> !cell.text().isEmpty())) {
      all.add(List.copyOf(head));
    }
    return all;
  }

  /** The table, or none without rows. */
  List<TableView> table(String... remarks) {
    return table(List.of(remarks));
  }

  /** The table, or none without rows; the remarks stand below it. */
  List<TableView> table(List<String> remarks) {
    return table("", List.of(new Body(false, rows)), remarks, false);
  }

  /** The rows as a list of facts, without the classes of tables; none without rows. */
  List<TableView> list() {
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new TableView(
                name, "", List.of(), List.of(new Body(false, rows)), List.of(), false, ""));
  }

  /**
   * The table, or none without rows; the remarks are its last row, on the page of the rows before.
   *
   * @param room classes of what keeps room before it; may be empty
   * @param last how many rows at the end are kept on one page with them
   */
  List<TableView> kept(String room, int last, List<String> remarks) {
    int from = Math.max(0, rows.size() - last);
    var bodies = new ArrayList<Body>();
    if (from > 0) {
      bodies.add(new Body(false, rows.subList(0, from)));
    }
    bodies.add(new Body(true, rows.subList(from, rows.size())));
    return table(room, bodies, remarks, true);
  }

  /** The table, each row kept on one page with those {@code under} it. */
  List<TableView> keptByRow(String under, List<String> remarks) {
    var bodies = new ArrayList<Body>();
    for (int from = 0; from < rows.size(); ) {
      int to = from + 1;
      while (to < rows.size() && rows.get(to).style().equals(under)) {
        to++;
      }
      bodies.add(new Body(true, rows.subList(from, to)));
      from = to;
    }
    return table("", bodies, remarks, true);
  }

  private List<TableView> table(
      String room, List<Body> bodies, List<String> remarks, boolean kept) {
    String width = Integer.toString(columns.size());
    return rows.isEmpty()
        ? List.of()
        : List.of(new TableView(style, room, heads(), bodies, remarks, kept, width));
  }
}
