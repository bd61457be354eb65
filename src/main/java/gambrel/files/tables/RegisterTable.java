package gambrel.files.tables;

import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.ChargeLine;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Settings;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code data/statements.csv}: the register as a table, and back. */
public final class RegisterTable {
  /** The file's name. */
  public static final String NAME = "statements.csv";

  private static final int NUMBER = 13;

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
        .add("figures", RegisterRow::figures)
        .add("number", RegisterRow::number);
  }

  /** Whether a header is that of a shop with this unit; older registers have no numbers. */
  public static boolean fits(List<String> header, Settings settings) {
    var names = columns(settings).names();
    return header.equals(names) || header.equals(names.subList(0, NUMBER));
  }

  /**
   * Reads the rows of a register.
   *
   * @param charges the rows of {@link ChargesTable}
   * @throws IllegalArgumentException if a row was not written by this program
   */
  public static Register read(
      List<List<String>> rows, List<List<String>> charges, Settings settings) {
    var currency = settings.currency();
    var lines = ChargesTable.read(charges, currency);
    var register = new Register(rows.stream().map(row -> read(row, lines, currency)).toList());
    register.latest().forEach(row -> row.number().ifPresent(lines::remove));
    if (!lines.isEmpty()) {
      throw new IllegalArgumentException("charges of no statement in force: " + lines.keySet());
    }
    return register;
  }

  private static RegisterRow read(
      List<String> cells, Map<Integer, List<ChargeLine>> lines, Currency currency) {
    try {
      var number = Optional.of(cells).filter(c -> c.size() > NUMBER).flatMap(c -> whole(c, NUMBER));
      return new RegisterRow(
          Columns.unguard(cells.get(0)),
          Columns.unguard(cells.get(1)),
          Integer.parseInt(cells.get(2)),
          LocalDateTime.parse(cells.get(3)),
          Weight.of(new BigDecimal(cells.get(4))),
          Money.exact(new BigDecimal(cells.get(5)), currency),
          Money.exact(new BigDecimal(cells.get(6)), currency),
          Money.exact(new BigDecimal(cells.get(7)), currency),
          whole(cells, 9),
          Columns.unguard(cells.get(10)),
          cells.get(11),
          cells.get(12),
          number,
          number.map(n -> lines.getOrDefault(n, List.of())).orElse(List.of()));
    } catch (RuntimeException e) {
      throw new IllegalArgumentException("not a register row: " + cells, e);
    }
  }

  private static Optional<Integer> whole(List<String> cells, int column) {
    return Optional.of(cells.get(column)).filter(t -> !t.isEmpty()).map(Integer::valueOf);
  }
}
