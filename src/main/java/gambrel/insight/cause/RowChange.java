package gambrel.insight.cause;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One row and the cells that a correction would change in it.
 *
 * @param weighing the row as it is, or as it would be if it stood alone
 * @param body the body that it would be keyed to
 * @param net the net weight that it would have, in hundred-thousandths of the shop's unit
 * @param cells the cells that change, in the order in which a person would type them
 */
record RowChange(Weighing weighing, String body, long net, List<Cell> cells) {
  /** A cell of the row with its new value. */
  record Cell(Field field, String value) {}

  /** Keys a row to another body. */
  static RowChange move(Weighing weighing, String body) {
    return new RowChange(
        weighing, body, weighing.net().hundredThousandths(), List.of(new Cell(Field.BODY, body)));
  }

  /** Keys each of some rows to another body. */
  static List<RowChange> move(List<Weighing> weighings, String body) {
    return weighings.stream().map(weighing -> move(weighing, body)).toList();
  }

  /** Keys a row to another batch. */
  static RowChange toBatch(Weighing weighing, String batch) {
    return new RowChange(
        weighing,
        weighing.body(),
        weighing.net().hundredThousandths(),
        List.of(new Cell(Field.BATCH, batch)));
  }

  /** Voids a row. */
  static RowChange remove(Weighing weighing) {
    return new RowChange(weighing, weighing.body(), 0, List.of(new Cell(Field.STATUS, "void")));
  }

  /**
   * Gives a row another net weight.
   *
   * @param net in the row's unit
   * @param tare the tare to type with it, in the row's unit; empty if none
   * @param shop the shop's unit
   */
  static RowChange net(
      Weighing weighing, BigDecimal net, Optional<BigDecimal> tare, WeightUnit shop) {
    var cells = new ArrayList<Cell>();
    tare.ifPresent(t -> cells.add(new Cell(Field.TARE, t.toPlainString())));
    cells.add(new Cell(Field.NET, net.toPlainString()));
    long then = weighing.unit().weight(net, shop).hundredThousandths();
    return new RowChange(weighing, weighing.body(), then, cells);
  }

  /** Reads a row's weights in {@code unit}; {@code shop} is the shop's unit. */
  static RowChange unit(Weighing weighing, WeightUnit unit, WeightUnit shop) {
    long then = unit.weight(weighing.shown(), shop).hundredThousandths();
    return new RowChange(weighing, weighing.body(), then, List.of(new Cell(Field.UNIT, unit.id())));
  }

  /** The batch that it would be keyed to; empty if none. */
  String batch() {
    return value(Field.BATCH).orElse(weighing.batch());
  }

  /** Whether the row would no longer count. */
  boolean isVoid() {
    return value(Field.STATUS).isPresent();
  }

  /** The new value of a cell, or empty if the cell stays as it is. */
  Optional<String> value(Field field) {
    return cells.stream().filter(c -> c.field() == field).map(Cell::value).findFirst();
  }
}
