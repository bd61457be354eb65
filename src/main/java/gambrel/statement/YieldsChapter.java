package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * The month's yields. Whatever is empty does not show.
 *
 * @param groups by whose bodies they are
 */
public record YieldsChapter(List<YieldGroup> groups) {
  /** Copies the groups. */
  public YieldsChapter {
    groups = List.copyOf(groups);
  }

  /**
   * Yields of one owner's kind of bodies.
   *
   * @param title whose they are
   * @param rows a species each
   */
  public record YieldGroup(String title, List<YieldRow> rows) {
    /** Copies the rows. */
    public YieldGroup {
      rows = List.copyOf(rows);
    }
  }

  /**
   * What a species gave.
   *
   * @param species its name
   * @param dressing % of live
   * @param takeHome % of cold
   * @param meat % of cold
   * @param bone % of the weight into the boning room
   * @param fat % of the weight into the boning room
   */
  public record YieldRow(
      String species,
      Counted dressing,
      Counted takeHome,
      Counted meat,
      Counted bone,
      Counted fat) {}
}
