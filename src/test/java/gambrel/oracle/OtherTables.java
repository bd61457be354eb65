package gambrel.oracle;

import java.util.List;

/** {@code data/batches.csv} and {@code data/rows.csv}. */
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
}
