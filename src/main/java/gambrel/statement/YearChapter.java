package gambrel.statement;

import java.util.List;

/**
 * A year month by month; its last row in each group is the year's.
 *
 * @param title the year
 * @param groups a species each; none in any month but December
 */
public record YearChapter(String title, List<Group> groups) {
  /** Copies the groups. */
  public YearChapter {
    groups = List.copyOf(groups);
  }

  /**
   * One species.
   *
   * @param title its name
   * @param rows months that have a body, then the year
   */
  public record Group(String title, List<Row> rows) {
    /** Copies the rows. */
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A month.
   *
   * @param month its name
   * @param killed bodies killed
   * @param hot mean hot weight of a body
   * @param chill lost in the chiller, % of hot
   * @param ageing lost while hanging, % of cold
   * @param cut bodies cut
   * @param bench lost on the bench, % of the weight into the boning room
   * @param home take-home, % of cold
   */
  public record Row(
      String month,
      String killed,
      String hot,
      String chill,
      String ageing,
      String cut,
      String bench,
      String home) {}
}
