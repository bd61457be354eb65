package gambrel.oracle;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.TreeMap;

/** {@code data/batches.csv}, {@code data/rows.csv} and the register's figures. */
final class OtherTables {
  private OtherTables() {}

  static List<List<String>> batches(World world) {
    var table =
        Print.table(world.setup, "batch,product,meat_in_kg,added_kg,out_kg,loss_kg,loss_pct,state");
    for (var batch : world.batches.values()) {
      var product =
          world.setup.rows("batches").stream()
              .filter(l -> l.get("batch").equals(batch.id))
              .map(l -> l.get("product"))
              .findFirst()
              .orElse("");
      table.add(
          List.of(
              Print.text(batch.id),
              Print.text(product),
              Num.text(batch.meat),
              Num.text(batch.added),
              Num.text(batch.out),
              Num.text(batch.loss),
              Num.text(batch.lossPercent),
              batch.state));
    }
    return table;
  }

  static List<List<String>> rows(World world) {
    var table = Print.table(world.setup, "file,read,used,repeat,void,set_aside");
    for (var file : world.exports.files) {
      var rows = world.exports.rows.stream().filter(r -> r.file.equals(file)).toList();
      table.add(
          List.of(
              Print.text(file),
              Integer.toString(rows.size()),
              count(rows, Row.Mark.USED),
              count(rows, Row.Mark.REPEAT),
              count(rows, Row.Mark.VOID),
              count(rows, Row.Mark.SET_ASIDE)));
    }
    return table;
  }

  private static String count(List<Row> rows, Row.Mark mark) {
    return Long.toString(rows.stream().filter(r -> r.mark == mark).count());
  }

  static List<List<String>> statements(World world) {
    var table =
        Print.table(
            world.setup,
            "customer,body,revision,issued,take_home_kg,charges,tax,paid,due,replaces");
    var issued =
        world
            .asOf
            .atZone(world.setup.zone)
            .format(DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss"));
    var sorted = new TreeMap<String, List<String>>(Split.byBytes());
    if (world.setup.columns.stopped() || world.exports.unfinished) {
      return table;
    }
    world.yields.forEach(
        (id, yield) -> {
          var verdict = world.verdicts.get(id);
          if (verdict.state.equals("issued")) {
            for (var customer : verdict.recipients()) {
              var s = new StatementFigures(world, yield, customer);
              sorted.put(
                  customer + "\u0000" + id,
                  List.of(
                      Print.text(customer),
                      Print.text(id),
                      "1",
                      issued,
                      s.takeHome,
                      s.charges,
                      s.tax,
                      s.paid,
                      s.due,
                      ""));
            }
          }
        });
    table.addAll(sorted.values());
    return table;
  }
}
