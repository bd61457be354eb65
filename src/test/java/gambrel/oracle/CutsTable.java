package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** {@code data/cuts.csv}. */
final class CutsTable {
  private static final String HEADER =
      "body,item,parent,kind,step,level,weight_kg,packs,pieces,of_boning_pct";
  private static final List<String> STEPS =
      List.of("hot", "cold", "aged", "block", "tub", "pack", "bin");

  private CutsTable() {}

  static List<List<String>> of(World world) {
    var table = Print.table(world.setup, HEADER);
    for (var yield : world.yields.values()) {
      var body = yield.body;
      var rows = new ArrayList<>(body.rail.standingRows());
      body.rows.stream().filter(r -> !r.isRail()).forEach(rows::add);
      for (var item : body.tree.items()) {
        for (var step : STEPS) {
          var own = rows.stream().filter(r -> r.item.equals(item) && r.is(step)).toList();
          add(table, body, item, step, "own", own);
        }
        var under = rows.stream().filter(r -> r.isOut() && body.tree.isUnder(r.item, item));
        add(table, body, item, "", "total", under.toList());
      }
    }
    return table;
  }

  private static void add(
      List<List<String>> table,
      BodyFigures body,
      String item,
      String step,
      String level,
      List<Row> rows) {
    if (rows.isEmpty()) {
      return;
    }
    BigFraction weight = BodyFigures.sum(rows);
    table.add(
        List.of(
            Print.text(body.beast.id()),
            Print.text(item),
            Print.text(body.tree.parent(item)),
            body.tree.kind(item),
            step,
            level,
            Num.text(weight),
            Long.toString(rows.stream().filter(r -> r.is("pack")).count()),
            pieces(rows),
            Num.text(Num.percent(weight, body.boning))));
  }

  private static String pieces(List<Row> rows) {
    var given = rows.stream().filter(r -> r.pieces != null).mapToInt(r -> r.pieces).toArray();
    return given.length == 0 ? "" : Integer.toString(java.util.Arrays.stream(given).sum());
  }
}
