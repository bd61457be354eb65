package gambrel.statement;

import java.util.List;

/**
 * A part of the owner's month. A part without tables, remarks and charts does not show.
 *
 * @param title its heading
 * @param style its classes in {@code page.css}
 * @param breaks where pages break: {@code room} begins a page if too little is left of one, {@code
 *     kept} is never broken; empty for the usual rules
 * @param tables its tables
 * @param remarks how to read them
 * @param charts its charts
 */
public record PartView(
    String title,
    String style,
    String breaks,
    List<TableView> tables,
    List<String> remarks,
    List<ChartView> charts) {
  /** Copies the lists. */
  public PartView {
    tables = List.copyOf(tables);
    remarks = List.copyOf(remarks);
    charts = List.copyOf(charts);
  }

  /** A chapter without charts. */
  public PartView(String title, String breaks, List<TableView> tables, List<String> remarks) {
    this(title, "wide chapter", breaks, tables, remarks, List.of());
  }

  /** Whether there is nothing to show. */
  public boolean isEmpty() {
    return tables.isEmpty() && remarks.isEmpty() && charts.isEmpty();
  }
}
