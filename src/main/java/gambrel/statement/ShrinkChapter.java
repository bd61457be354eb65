package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * Weight lost, against the twelve months before. Whatever is empty does not show.
 *
 * @param groups losses by who bears them
 * @param hanging what a day on the rail costs, a species each
 * @param further what one day more costs and brings, by whose bodies they are
 * @param chiller chill shrink by day
 * @param notes what could not be charted or compared
 * @param weights how many bodies have which weight
 */
public record ShrinkChapter(
    List<Group> groups,
    List<Hanging> hanging,
    List<Further> further,
    Chiller chiller,
    List<String> notes,
    List<Fact> weights) {
  /** Copies the lists. */
  public ShrinkChapter {
    groups = List.copyOf(groups);
    hanging = List.copyOf(hanging);
    further = List.copyOf(further);
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
   */
  public record Hanging(
      String species,
      String days,
      Counted percent,
      String between,
      String weight,
      String money) {}

  /**
   * What one day more costs and brings on the bodies of one owner.
   *
   * @param title whose
   * @param heads of the figures' columns
   * @param rows a species each
   * @param notes what could not be told, and how sure the rest is
   */
  public record Further(
      String title, List<Ranged> heads, List<FurtherRow> rows, List<String> notes) {
    /** Copies the lists. */
    public Further {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
      notes = List.copyOf(notes);
    }
  }

  /**
   * The same of a species.
   *
   * @param species its name
   * @param bodies how many
   * @param days the middle of the days that they hung
   * @param figures a column each, empty where not known
   */
  public record FurtherRow(String species, String bodies, String days, List<Ranged> figures) {
    /** Copies the figures. */
    public FurtherRow {
      figures = List.copyOf(figures);
    }
  }

  /**
   * A figure, or the head of its column.
   *
   * @param text the figure, or empty
   * @param between between what it lies, or empty
   */
  public record Ranged(String text, String between) {}

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
