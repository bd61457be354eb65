package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;

/** {@code data/pieces.csv}. */
final class PiecesTable {
  private PiecesTable() {}

  static List<List<String>> of(World world) {
    var table = Print.table(world.setup, "body,item,block_kg,out_kg,loss_kg,balance_u_kg");
    for (var yield : world.yields.values()) {
      var body = yield.body;
      var blocks = body.rows.stream().filter(r -> r.is("block")).toList();
      boolean outside = body.products().stream().anyMatch(p -> lies(body, p, blocks));
      for (var item : body.tree.items()) {
        var own = blocks.stream().filter(r -> r.item.equals(item)).toList();
        if (!own.isEmpty()) {
          table.add(row(body, item, own, outside));
        }
      }
    }
    return table;
  }

  private static boolean lies(BodyFigures body, Row product, List<Row> blocks) {
    return blocks.stream().noneMatch(b -> body.tree.isUnder(product.item, b.item));
  }

  private static List<String> row(
      BodyFigures body, String item, List<Row> blocks, boolean outside) {
    var out = body.products().stream().filter(p -> body.tree.isUnder(p.item, item)).toList();
    var all = new ArrayList<>(blocks);
    all.addAll(out);
    var in = BodyFigures.sum(blocks);
    var came = BodyFigures.sum(out);
    return List.of(
        Print.text(body.beast.id()),
        Print.text(item),
        Num.text(in),
        outside ? "" : Num.text(came),
        outside ? "" : Num.text(in.subtract(came)),
        Num.root(Resolution.square(all, body.setup.unit)));
  }
}
