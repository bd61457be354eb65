package gambrel.statement;

import java.util.List;

/**
 * What the cuts were worth. Whatever is empty does not show.
 *
 * @param bodies what bodies were worth
 * @param choices pieces that were cut in several ways
 * @param small the heading of {@code smalls}
 * @param smalls what a little more on one cut is worth
 * @param remarks how to read it; what to enter where values are missing
 */
public record ValueChapter(
    List<Worth> bodies,
    List<Choice> choices,
    String small,
    List<SmallRow> smalls,
    List<String> remarks) {
  /** Copies the lists. */
  public ValueChapter {
    bodies = List.copyOf(bodies);
    choices = List.copyOf(choices);
    smalls = List.copyOf(smalls);
    remarks = List.copyOf(remarks);
  }

  /**
   * What bodies of a species were worth, money for a unit of cold weight.
   *
   * @param species its name
   * @param bodies how many
   * @param value all over all
   * @param middle the middle half of the bodies
   * @param least the body with least, and its value
   * @param most the body with most, and its value
   * @param before all over all in the twelve months before, at the same values
   */
  public record Worth(
      String species,
      String bodies,
      String value,
      String middle,
      String least,
      String most,
      String before) {}

  /**
   * A piece and the ways in which it was cut.
   *
   * @param piece its name and what the values are for
   * @param ways best first
   */
  public record Choice(String piece, List<Way> ways) {
    /** Copies the ways. */
    public Choice {
      ways = List.copyOf(ways);
    }
  }

  /**
   * A way to cut a piece.
   *
   * @param items what it was packed as
   * @param bodies how many bodies
   * @param value money for a unit of weight, all over all
   * @param middle the middle half of the bodies
   * @param less how much less than the best way; empty for that
   * @param sure how sure that is
   */
  public record Way(
      String items, String bodies, String value, String middle, String less, String sure) {}

  /**
   * A cut and what a little more on it is worth.
   *
   * @param cut its name
   * @param value money for a unit of weight
   * @param mince gained over mince, or empty
   * @param dice gained over dice, or empty
   * @param beside the cut beside it, or empty
   * @param overBeside gained over that
   */
  public record SmallRow(
      String cut, String value, String mince, String dice, String beside, String overBeside) {}
}
