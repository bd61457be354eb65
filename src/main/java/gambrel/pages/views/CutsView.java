package gambrel.pages.views;

import java.util.List;
import java.util.Optional;

/**
 * What is in the boxes, cut by cut in the order of the carcase, as a scale shows it.
 *
 * @param title heading of the list
 * @param packs head of the column of packs; empty if no number of packs is known
 * @param weight head of the column of weights
 * @param blocks the list in blocks that are not broken across sheets, each of one or two columns
 * @param total the sum of the list; empty for a list of one row
 * @param notes remarks on the list; may be empty
 */
public record CutsView(
    String title,
    String packs,
    String weight,
    List<List<Column>> blocks,
    Optional<Row> total,
    List<String> notes) {
  /**
   * A column of the list.
   *
   * @param groups its cuts
   */
  public record Column(List<Group> groups) {}

  /**
   * Cuts that lie together.
   *
   * @param title the part of the carcase, or empty
   * @param rows at least one cut
   */
  public record Group(String title, List<Row> rows) {}

  /**
   * One cut.
   *
   * @param name as the region calls it
   * @param note such as how much of it is meat; may be empty
   * @param packs their number, or empty
   * @param weight without its unit
   */
  public record Row(String name, String note, String packs, String weight) {}
}
