package gambrel.statement;

import java.util.List;

/**
 * Work on the block. Whatever is empty does not show.
 *
 * @param rows a boner and kind of piece each
 * @param remarks how to read it; what to write down where nothing can be read
 */
public record PaceChapter(List<Row> rows, List<String> remarks) {
  /** Copies the lists. */
  public PaceChapter {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /**
   * How fast one kind of piece was boned.
   *
   * @param piece the piece, with its species
   * @param boner who
   * @param pieces how many
   * @param minutes median of the minutes a piece
   * @param middle their middle half
   * @param anHour weight boned in an hour
   * @param beforeMinutes median in the twelve months before
   * @param beforeAnHour weight boned in an hour then
   */
  public record Row(
      String piece,
      String boner,
      String pieces,
      String minutes,
      String middle,
      String anHour,
      String beforeMinutes,
      String beforeAnHour) {}
}
