package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/**
 * The month's yields. Whatever is empty does not show.
 *
 * @param groups by whose bodies they are
 * @param lines like bodies beside those of the twelve months before
 * @param primals what came of each primal, a species after another
 * @param remarks what was published, and what was found between boners
 */
public record YieldsChapter(
    List<YieldGroup> groups, List<Line> lines, List<PrimalGroup> primals, List<String> remarks) {
  /** Copies the lists. */
  public YieldsChapter {
    groups = List.copyOf(groups);
    lines = List.copyOf(lines);
    primals = List.copyOf(primals);
    remarks = List.copyOf(remarks);
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

  /**
   * What like bodies gave.
   *
   * @param name a species, a class or a boner
   * @param whole whether it is a whole species
   * @param cells take-home, bone, fat, trim
   * @param before whether any cell knows the twelve months before
   */
  public record Line(String name, boolean whole, List<Cell> cells, boolean before) {
    /** Copies the cells. */
    public Line {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A percentage.
   *
   * @param month in the month, of how many bodies
   * @param before in the twelve months before: median and middle half; or empty
   */
  public record Cell(Counted month, String before) {}

  /**
   * The primals of a species.
   *
   * @param species its name
   * @param rows in tree order
   */
  public record PrimalGroup(String species, List<PrimalRow> rows) {
    /** Copies the rows. */
    public PrimalGroup {
      rows = List.copyOf(rows);
    }
  }

  /**
   * What came of a primal, % of the weight into the boning room.
   *
   * @param name the primal
   * @param month in the month, of how many bodies
   * @param median of the bodies of the twelve months before, of how many
   * @param middle their middle half
   */
  public record PrimalRow(String name, Counted month, Counted median, String middle) {}
}
