package gambrel.files.folder;

import gambrel.trade.cuts.CutTrees;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The ids that some files of a shop define and others may name.
 *
 * @param cuts the items
 * @param customers the customers, the shop included
 * @param bodies the bodies
 * @param tags the tags of bodies
 * @param scales the scales
 */
record Known(CutTrees cuts, IdIndex customers, IdIndex bodies, Set<String> tags, IdIndex scales) {

  /** The ids of these items, customers, bodies and scales. */
  static Known of(
      CutTrees cuts, IdIndex customers, Collection<Body> bodies, Collection<String> scales) {
    return new Known(
        cuts,
        customers,
        new IdIndex(bodies.stream().map(Body::id).toList()),
        bodies.stream().flatMap(body -> body.tags().stream()).collect(Collectors.toSet()),
        new IdIndex(scales));
  }

  /** Whether a text is a tag and not the id of a body. */
  boolean isTag(String text) {
    return tags.contains(text) && bodies.find(text).isEmpty();
  }

  /** The item in a cell, which at least one species must have; empty if the cell is blank. */
  String optionalItem(ShopRow row, String column) {
    String item = row.get(column, CellTypes::item).orElse("");
    if (!item.isEmpty() && !isItem(item)) {
      throw row.refuse(
          ShopRow.cell(Notice.of(NoticeCode.REFERENCE_UNKNOWN, "ITEM", row.place()), column, item));
    }
    return item;
  }

  /** Whether at least one species has an item. */
  boolean isItem(String item) {
    return cuts.all().stream().anyMatch(tree -> tree.find(item).isPresent());
  }

  /** As {@link #optionalItem}, but the cell must not be blank. */
  String neededItem(ShopRow row, String column) {
    row.needText(column);
    return optionalItem(row, column);
  }
}
