package gambrel.trade.cuts;

import java.util.List;

/**
 * One part of a body, or one thing made of it.
 *
 * @param id region-neutral name in the data
 * @param parent the id of the item it comes from, "" for the root
 * @param name what the customer reads
 * @param kind what its weight counts as
 * @param count how many of it one body has, at least 1; matters for parts weighed hanging
 * @param unece codes of the UN/ECE standards or the numbering they share; several where the
 *     standards number variants of one cut
 * @param ownName whether the shop itself gave the name, which then stands in every language
 * @param facts what the trade knows of it
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

  /** An item under the name that its region gives it, with the facts of its parent. */
  public Item(String id, String parent, String name, Kind kind, int count, List<String> unece) {
    this(id, parent, name, kind, count, unece, false, Facts.INHERITED);
  }
}
