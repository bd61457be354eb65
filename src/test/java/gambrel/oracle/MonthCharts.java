package gambrel.oracle;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** {@code data/month-charts.csv}; limits, where there are enough bodies for some, are left open. */
final class MonthCharts {
  private static final int GAP_DAYS = 60;
  private static final int ENOUGH = 20;

  private MonthCharts() {}

  static List<List<String>> of(Months months) {
    var table =
        Print.table(
            months.world.setup,
            "month,chart,species,body,killed,value_pct,moving_range,baseline_bodies,centre,lower,"
                + "upper,signal");
    for (var month : months.all()) {
      for (var loss : List.of(MonthLoss.CHILL, MonthLoss.BENCH)) {
        for (var species : months.world.setup.trees.keySet()) {
          add(table, months, month, loss, species);
        }
      }
    }
    return table;
  }

  private static void add(
      List<List<String>> table, Months months, YearMonth month, MonthLoss loss, String species) {
    var all = new ArrayList<>(charted(loss.chartedBefore(months, month), species));
    int baseline = all.size();
    all.addAll(charted(loss.charted(months, month), species));
    var limit = baseline >= ENOUGH ? OracleDiff.ANY : "";
    for (int i = baseline; i < all.size(); i++) {
      var body = all.get(i);
      table.add(
          List.of(
              month.toString(),
              loss.id(),
              species,
              Print.text(body.id()),
              body.killed().toString(),
              Num.text(Num.percent(body.number(loss.lost), body.number(loss.of))),
              i == 0 ? "" : movingRange(all.get(i - 1), body, loss),
              Integer.toString(baseline),
              limit,
              limit,
              limit,
              limit));
    }
  }

  private static List<Months.Member> charted(List<Months.Member> bodies, String species) {
    return bodies.stream().filter(m -> m.species().equals(species) && m.killed() != null).toList();
  }

  private static String movingRange(Months.Member before, Months.Member body, MonthLoss loss) {
    if (ChronoUnit.DAYS.between(before.killed(), body.killed()) > GAP_DAYS) {
      return "";
    }
    var one = Num.percent(before.number(loss.lost), before.number(loss.of));
    var other = Num.percent(body.number(loss.lost), body.number(loss.of));
    return Num.text(other.subtract(one).abs());
  }
}
