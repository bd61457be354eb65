package gambrel.files.tables;

import gambrel.trade.measure.Money;
import gambrel.trade.register.ChargeLine;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * {@code data/charges.csv}: the charges of every statement in force as a table, and back. It is a
 * part of the register, since nothing else keeps them.
 */
public final class ChargesTable {
  /** The file's name. */
  public static final String NAME = "charges.csv";

  private ChargesTable() {}

  /** A charge and the statement that it stands on. */
  private record Row(RegisterRow statement, ChargeLine line) {}

  /** The table of a register. */
  public static Table of(Register register, Settings settings) {
    return columns(settings)
        .table(
            NAME,
            () ->
                register.latest().stream()
                    .flatMap(row -> row.lines().stream().map(line -> new Row(row, line))));
  }

  private static Columns<Row> columns(Settings settings) {
    var currency = settings.currency();
    return new Columns<Row>(settings.unit())
        .add("number", row -> row.statement().number())
        .add("customer", row -> row.statement().customer())
        .add("body", row -> row.statement().body())
        .add("revision", row -> row.statement().revision())
        .add("issued", row -> row.statement().issued().format(RegisterTable.ISSUED))
        .add("charge", row -> row.line().charge())
        .add("description", row -> row.line().description())
        .add("quantity", row -> row.line().quantity())
        .add("unit", row -> row.line().unit())
        .add("price", row -> row.line().price())
        .add("amount", row -> row.line().amount().decimal(currency))
        .add("tax_percent", row -> row.line().taxPercent())
        .add("tax", row -> row.line().tax().decimal(currency));
  }

  /** Whether a header is that of this table. */
  public static boolean fits(List<String> header, Settings settings) {
    return header.equals(columns(settings).names());
  }

  /**
   * The charges of each statement by its number, in the order of the rows.
   *
   * @throws IllegalArgumentException if a row was not written by this program
   */
  static Map<Integer, List<ChargeLine>> read(List<List<String>> rows, Currency currency) {
    var lines = new HashMap<Integer, List<ChargeLine>>();
    for (var cells : rows) {
      try {
        lines
            .computeIfAbsent(Integer.valueOf(cells.get(0)), n -> new ArrayList<>())
            .add(line(cells, currency));
      } catch (RuntimeException e) {
        throw new IllegalArgumentException("not a charge: " + cells, e);
      }
    }
    return lines;
  }

  private static ChargeLine line(List<String> cells, Currency currency) {
    return new ChargeLine(
        Columns.unguard(cells.get(5)),
        Columns.unguard(cells.get(6)),
        new BigDecimal(cells.get(7)),
        cells.get(8),
        new BigDecimal(cells.get(9)),
        Money.exact(new BigDecimal(cells.get(10)), currency),
        new BigDecimal(cells.get(11)),
        Money.exact(new BigDecimal(cells.get(12)), currency));
  }
}
