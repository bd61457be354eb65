package gambrel.pages.views;

import java.util.List;

/**
 * A part of the owner's month. A part without tables, remarks and charts is not shown.
 *
 * @param title its heading
 * @param style its classes in {@code page.css}
 * @param room whether it begins a new page if too little of a page is left
 * @param tables its tables
 * @param remarks how to read them
 * @param charts its charts
 */
public record PartView(
    String title,
    String style,
    boolean room,
    List<TableView> tables,
    List<String> remarks,
    List<ChartView> charts) {
  /** A part without charts. */
  public static PartView of(String title, List<TableView> tables, List<String> remarks) {
    return new PartView(title, "wide chapter", false, tables, remarks, List.of());
  }

  /** A part without charts that keeps room for its first rows. */
  public static PartView withRoom(String title, List<TableView> tables, List<String> remarks) {
    return new PartView(title, "wide chapter", true, tables, remarks, List.of());
  }

  /** The part with charts. */
  public PartView with(List<ChartView> more) {
    return new PartView(title, style, room, tables, remarks, more);
  }

  /** The part with other classes. */
  public PartView with(String classes) {
    return new PartView(title, classes, room, tables, remarks, charts);
  }

  /** Whether there is nothing to show. */
  public boolean isEmpty() {
    return tables.isEmpty() && remarks.isEmpty() && charts.isEmpty();
  }
}
