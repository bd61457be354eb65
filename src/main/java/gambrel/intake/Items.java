package gambrel.intake;

import gambrel.cuts.CutTrees;
import gambrel.notice.NoticeCode;

/** Items of the cut trees as other files name them. */
final class Items {
  private final CutTrees trees;

  Items(CutTrees trees) {
    this.trees = trees;
  }

  /** The item in a cell, which some species must have; empty if the cell is blank. */
  String optional(Row row, String column) {
    String item = row.get(column, Formats::item).orElse("");
    boolean known = trees.all().stream().anyMatch(tree -> tree.find(item).isPresent());
    if (!item.isEmpty() && !known) {
      throw row.refuse(NoticeCode.REFERENCE_UNKNOWN, "ITEM", column, item);
    }
    return item;
  }

  /** As {@link #optional}, but the cell must not be blank. */
  String needed(Row row, String column) {
    row.needText(column);
    return optional(row, column);
  }
}
