package gambrel.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/** {@code data/bodies.csv}. */
final class BodiesTable {
  private static final String HEADER =
      "body,species,class,killed,state,live_kg,hot_kg,cold_kg,boning_kg,take_home_kg,meat_home_kg,"
          + "offal_kg,tub_kg,bone_kg,fat_kg,waste_kg,rail_trim_kg,cutting_loss_kg,unweighed_kg,"
          + "balance_u_kg,balance_scale_kg,batch_loss_kg,dressing_pct,chill_shrink_pct,"
          + "ageing_shrink_pct,take_home_of_hot_pct,take_home_of_cold_pct,meat_of_cold_pct,"
          + "days_hung,hours_chilled,reasons";

  private BodiesTable() {}

  static List<List<String>> of(World world) {
    var table = Print.table(world.setup, HEADER);
    var ids = new TreeSet<>(Split.byBytes());
    ids.addAll(world.setup.bodies.keySet());
    for (var id : ids) {
      var beast = world.setup.bodies.get(id);
      var row = new ArrayList<>(head(beast));
      if (beast.cancelled()) {
        row.add("cancelled");
        row.addAll(Collections.nCopies(table.get(0).size() - row.size(), ""));
      } else {
        var yield = world.yields.get(id);
        var verdict = world.verdicts.get(id);
        row.add(verdict.state);
        row.addAll(weights(yield));
        row.addAll(rates(yield));
        row.add(String.join(";", verdict.codes));
      }
      table.add(row);
    }
    return table;
  }

  private static List<String> head(Beast beast) {
    return List.of(
        Print.text(beast.id()),
        Print.text(beast.species()),
        Print.text(beast.grade()),
        Print.whole(beast.killed()));
  }

  private static List<String> weights(Yield y) {
    return List.of(
        Num.text(y.body.beast.live()),
        Num.text(y.body.hot),
        Num.text(y.body.cold),
        Num.text(y.body.boning),
        Num.text(y.takeHome),
        Num.text(y.meatHome),
        Num.text(y.offal),
        Num.text(y.tub),
        Num.text(y.bone),
        Num.text(y.fat),
        Num.text(y.waste),
        Num.text(y.railTrim),
        Num.text(y.cuttingLoss),
        Num.text(y.unweighed),
        Num.root(y.balanceSquare),
        Num.root(y.scaleSquare),
        Num.text(y.batchLoss));
  }

  private static List<String> rates(Yield y) {
    var body = y.body;
    return List.of(
        Num.text(Num.percent(body.hot, body.beast.live())),
        Num.text(body.chillShrink()),
        Num.text(body.ageingShrink()),
        Num.text(Num.percent(y.takeHome, body.hot)),
        Num.text(Num.percent(y.takeHome, body.cold)),
        Num.text(Num.percent(y.meatHome, body.cold)),
        Print.whole(y.daysHung()),
        Num.text(body.hoursChilled()));
  }
}
