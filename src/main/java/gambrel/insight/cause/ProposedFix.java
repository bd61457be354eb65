package gambrel.insight.cause;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What may be done to one row by a correction. */
sealed interface ProposedFix {
  /** A cell of the row with its new value. */
  record Cell(Field field, String value) {}

  /** The cells that are changed, in the order in which a person would type them. */
  List<Cell> cells();

  /** Keys it to another body. */
  record Move(String body) implements ProposedFix {
    @Override
    public List<Cell> cells() {
      return List.of(new Cell(Field.BODY, body));
    }
  }

  /** Removes it. */
  record Remove() implements ProposedFix {
    @Override
    public List<Cell> cells() {
      return List.of(new Cell(Field.STATUS, "void"));
    }
  }

  /**
   * Gives it another net weight.
   *
   * @param net in the row's unit
   * @param tare the tare that has to be given with it, in the row's unit
   */
  record Net(BigDecimal net, Optional<BigDecimal> tare) implements ProposedFix {
    @Override
    public List<Cell> cells() {
      var cells = new ArrayList<Cell>();
      tare.ifPresent(t -> cells.add(new Cell(Field.TARE, t.toPlainString())));
      cells.add(new Cell(Field.NET, net.toPlainString()));
      return cells;
    }
  }

  /** Reads it in another unit. */
  record In(WeightUnit unit) implements ProposedFix {
    @Override
    public List<Cell> cells() {
      return List.of(new Cell(Field.UNIT, unit.id()));
    }
  }
}
