package gambrel.files.tables;

import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** {@code data/statements.csv}: the register as a table, and back. */
public final class RegisterTable {
  /** The file's name. */
  public static final String NAME = "statements.csv";

  private static final String COLUMNS =
      "customer,body,revision,issued,take_home_kg,charges,tax,paid,due,replaces,file,sha256,figures";
  private static final DateTimeFormatter ISSUED =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");

  private RegisterTable() {}

  /** The table of a register. */
  public static Table of(Register register, Settings settings) {
    var currency = settings.currency();
    return new Table(
        NAME,
        Table.columns(COLUMNS, settings.unit().id()),
        register.rows().stream().map(row -> row(row, currency)).toList());
  }

  private static List<String> row(RegisterRow row, Currency currency) {
    return new RowBuilder()
        .text(row.customer())
        .text(row.body())
        .number(row.revision())
        .text(row.issued().format(ISSUED))
        .weight(row.takeHome())
        .decimal(row.charges().decimal(currency))
        .decimal(row.tax().decimal(currency))
        .decimal(row.paid().decimal(currency))
        .decimal(row.due().decimal(currency))
        .number(row.replaces())
        .text(row.file())
        .text(row.sha256())
        .text(row.figures())
        .cells();
  }

  /** Whether a header was written by a shop of this unit. */
  public static boolean fits(List<String> header, Settings settings) {
    return header.equals(Table.columns(COLUMNS, settings.unit().id()));
  }

  /**
   * Reads a register back.
   *
   * @throws IllegalArgumentException if a row was not written by this program
   */
  public static Register read(List<List<String>> rows, Settings settings) {
    var register = new ArrayList<RegisterRow>();
    for (var row : rows) {
      register.add(read(row, settings.currency()));
    }
    return new Register(register);
  }

  private static RegisterRow read(List<String> cells, Currency currency) {
    try {
      return new RegisterRow(
          RowBuilder.unguard(cells.get(0)),
          RowBuilder.unguard(cells.get(1)),
          Integer.parseInt(cells.get(2)),
          LocalDateTime.parse(cells.get(3)),
          Weight.of(new BigDecimal(cells.get(4))),
          Money.exact(new BigDecimal(cells.get(5)), currency),
          Money.exact(new BigDecimal(cells.get(6)), currency),
          Money.exact(new BigDecimal(cells.get(7)), currency),
          Optional.of(cells.get(9)).filter(t -> !t.isEmpty()).map(Integer::valueOf),
          RowBuilder.unguard(cells.get(10)),
          cells.get(11),
          cells.get(12));
    } catch (RuntimeException e) {
      throw new IllegalArgumentException("not a register row: " + cells, e);
    }
  }
}
