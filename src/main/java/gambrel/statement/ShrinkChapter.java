package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * Weight lost, against the twelve months before. Whatever is empty does not show.
 *
 * @param groups losses by who bears them
 * @param hanging what a day on the rail costs, a species each
 * @param chiller chill shrink by day
 * @param notes what could not be charted or compared
 * @param weights how many bodies have which weight
 */
public record ShrinkChapter(
    List<Group> groups,
    List<Hanging> hanging,
    Chiller chiller,
    List<String> notes,
    List<Fact> weights) {
  /** Copies the lists. */
  public ShrinkChapter {
    groups = List.copyOf(groups);
    hanging = List.copyOf(hanging);
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
   * Chill shrink day by day, of bodies chilled for about as long.
   *
   * @param kinds the species, a column each
   * @param days in their order
   */
  public record Chiller(List<Kind> kinds, List<Day> days) {
    /** Copies the lists. */
    public Chiller {
      kinds = List.copyOf(kinds);
      days = List.copyOf(days);
    }
  }

  /**
   * A species.
   *
   * @param species its name
   * @param usual what it lost in the twelve months before, % of hot
   */
  public record Kind(String species, String usual) {}

  /**
   * A day of kill.
   *
   * @param day the day
   * @param cells a species each
   */
  public record Day(String day, List<Cell> cells) {
    /** Copies the cells. */
    public Day {
      cells = List.copyOf(cells);
    }
  }

  /**
   * What a species lost that was killed on a day.
   *
   * @param percent lost, % of hot
   * @param marked whether it belongs to a finding
   */
  public record Cell(Counted percent, boolean marked) {}
}
