package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * Weight lost, against the twelve months before. Whatever is empty does not show.
 *
 * @param groups losses by who bears them
 * @param hanging what a day on the rail costs, a species each
 * @param days chill shrink by day
 * @param notes what could not be charted or compared
 * @param weights how many bodies have which weight
 */
public record ShrinkChapter(
    List<Group> groups,
    List<Hanging> hanging,
    List<ChillDay> days,
    List<String> notes,
    List<Fact> weights) {
  /** Copies the lists. */
  public ShrinkChapter {
    groups = List.copyOf(groups);
    hanging = List.copyOf(hanging);
    days = List.copyOf(days);
    notes = List.copyOf(notes);
    weights = List.copyOf(weights);
  }

  /**
   * Losses of one kind of one owner's bodies.
   *
   * @param title whose, and where they were lost
   * @param rows some bodies each
   */
  public record Group(String title, List<Row> rows) {
    /** Copies the rows. */
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * What some bodies lost.
   *
   * @param bodies which
   * @param weight lost in the month
   * @param money the same, or empty
   * @param month per cent
   * @param before per cent of bodies like them in the twelve months before
   * @param middle between which the middle half of those lay, per cent
   */
  public record Row(
      String bodies, String weight, String money, Counted month, Counted before, String middle) {}

  /**
   * What hanging costs a species.
   *
   * @param species its name
   * @param days between which the middle half hung
   * @param percent lost a day, % of cold, and of how many bodies
   * @param between between which that surely lies
   * @param weight a day for a body of middle weight
   * @param money the same, or empty
   * @param charged what is charged a day, or empty
   */
  public record Hanging(
      String species,
      String days,
      Counted percent,
      String between,
      String weight,
      String money,
      String charged) {}

  /**
   * A day of the chiller.
   *
   * @param day the day of kill
   * @param species whose
   * @param percent lost, % of hot, by bodies chilled for about as long
   * @param usual the same in the twelve months before
   * @param more weight more than that; less has a minus
   * @param marked whether it belongs to a finding
   */
  public record ChillDay(
      String day, String species, Counted percent, String usual, String more, boolean marked) {}
}
