package gambrel.trade.cuts;

import java.util.List;

/**
 * One part of a body, or one thing made of it.
 *
 * @param id the name in data files, the same in every region
 * @param parent the id of the item that it comes from, or empty for the root
 * @param name the name that the customer reads
 * @param kind the group in which its weight is summed
 * @param count the number of such parts of one body, at least 1; limits hanging parts
 * @param unece codes of the UN/ECE standards or the numbering they share; several where the
 *     standards number variants of one cut
 * @param ownName whether the shop gave the name; pages then print it in every language
 * @param facts its own facts, without the inherited ones
 */
public record Item(
    String id,
    String parent,
    String name,
    Kind kind,
    int count,
    List<String> unece,
    boolean ownName,
    Facts facts) {

  /**
   * Copies the codes.
   *
   * @throws IllegalArgumentException if id or name is blank or count is below 1
   */
  public Item {
    if (id.isBlank()) {
      throw new IllegalArgumentException("an item without an id: " + name);
    }
    if (name.isBlank()) {
      throw new IllegalArgumentException(id + ": no name");
    }
    if (count < 1) {
      throw new IllegalArgumentException(id + ": count " + count + " is below 1");
    }
    unece = List.copyOf(unece);
  }

  /** An item with the name of its region and the facts of its parent. */
  public Item(String id, String parent, String name, Kind kind, int count, List<String> unece) {
    this(id, parent, name, kind, count, unece, false, Facts.INHERITED);
  }
}
