package gambrel.files.tables;

import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** {@code data/statements.csv}: the register as a table, and back. */
public final class RegisterTable {
  /** The file's name. */
  public static final String NAME = "statements.csv";

  /** Moments in shop-local time, with seconds. */
  static final DateTimeFormatter ISSUED = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");

  private RegisterTable() {}

  /** The table of a register. */
  public static Table of(Register register, Settings settings) {
    return columns(settings).table(NAME, () -> register.rows().stream());
  }

  private static Columns<RegisterRow> columns(Settings settings) {
    var currency = settings.currency();
    return new Columns<RegisterRow>(settings.unit())
        .add("customer", RegisterRow::customer)
        .add("body", RegisterRow::body)
        .add("revision", RegisterRow::revision)
        .add("issued", row -> row.issued().format(ISSUED))
        .add("take_home_kg", RegisterRow::takeHome)
        .add("charges", row -> row.charges().decimal(currency))
        .add("tax", row -> row.tax().decimal(currency))
        .add("paid", row -> row.paid().decimal(currency))
        .add("due", row -> row.due().decimal(currency))
        .add("replaces", RegisterRow::replaces)
        .add("file", RegisterRow::file)
        .add("sha256", RegisterRow::sha256)
        .add("figures", RegisterRow::figures);
  }

  /** Whether a header is that of a shop with this unit. */
  public static boolean fits(List<String> header, Settings settings) {
    return header.equals(columns(settings).names());
  }

  /**
   * Reads the rows of a register.
   *
   * @throws IllegalArgumentException if a row was not written by this program
   */
  public static Register read(List<List<String>> rows, Settings settings) {
    return new Register(rows.stream().map(row -> read(row, settings.currency())).toList());
  }

  private static RegisterRow read(List<String> cells, Currency currency) {
    try {
      return new RegisterRow(
          Columns.unguard(cells.get(0)),
          Columns.unguard(cells.get(1)),
          Integer.parseInt(cells.get(2)),
          LocalDateTime.parse(cells.get(3)),
          Weight.of(new BigDecimal(cells.get(4))),
          Money.exact(new BigDecimal(cells.get(5)), currency),
          Money.exact(new BigDecimal(cells.get(6)), currency),
          Money.exact(new BigDecimal(cells.get(7)), currency),
          Optional.of(cells.get(9)).filter(t -> !t.isEmpty()).map(Integer::valueOf),
          Columns.unguard(cells.get(10)),
          cells.get(11),
          cells.get(12));
    } catch (RuntimeException e) {
      throw new IllegalArgumentException("not a register row: " + cells, e);
    }
  }
}
