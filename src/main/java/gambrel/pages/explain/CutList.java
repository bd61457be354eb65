package gambrel.pages.explain;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints the items of a species as a tree. */
public final class CutList {
  private CutList() {}

  /** A heading, then a line for each item: its id below its parent's, name, kind and count. */
  public static List<String> of(CutTree tree) {
    var lines = new ArrayList<String>();
    lines.add(line(tree.species().id(), "name", "kind", "count"));
    for (var item : tree.items()) {
      lines.add(line(tree, item));
    }
    return lines;
  }

  private static String line(CutTree tree, Item item) {
    String indent = "  ".repeat(tree.path(item.id()).size());
    String count = item.count() == 1 ? "" : Integer.toString(item.count());
    return line(indent + item.id(), item.name(), item.kind().id(), count);
  }

  private static String line(String item, String name, String kind, String count) {
    return String.format(Locale.ROOT, "%-34s %-34s %-8s %s", item, name, kind, count)
        .stripTrailing();
  }
}
