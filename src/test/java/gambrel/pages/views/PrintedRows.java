package gambrel.pages.views;

import java.util.List;

/** The rows of lists that a statement prints in several parts, in the order of the page. */
public final class PrintedRows {
  private PrintedRows() {}

  /** All cuts in the boxes. */
  public static List<CutsView.Row> of(CutsView boxes) {
    return boxes.blocks().stream()
        .flatMap(List::stream)
        .flatMap(column -> column.groups().stream())
        .flatMap(group -> group.rows().stream())
        .toList();
  }

  /** All charges. */
  public static List<ChargesView.Row> of(ChargesView charges) {
    return charges.sections().stream().flatMap(section -> section.rows().stream()).toList();
  }

  /** All sums under the charges. */
  public static List<ChargesView.Sum> sums(ChargesView charges) {
    return charges.sections().stream().flatMap(section -> section.sums().stream()).toList();
  }
}
