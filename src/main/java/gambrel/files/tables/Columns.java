package gambrel.files.tables;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The columns of a data file: each has a name and a value that is read from what a row is about.
 *
 * @param <T> what a row is about
 */
final class Columns<T> {
  /** Decimals of percentages and hours. */
  private static final int DECIMALS = 3;

  /** What a formula begins with, after any quotes. */
  private static final String FORMULA = "=+@\t\r-";

  private final List<String> names = new ArrayList<>();
  private final List<Function<? super T, ?>> values = new ArrayList<>();
  private final String unit;

  /** For a file without weights. */
  Columns() {
    this(WeightUnit.KG);
  }

  /** For a file with weights in {@code unit}. */
  Columns(WeightUnit unit) {
    this.unit = unit.id();
  }

  /**
   * Adds a column.
   *
   * @param name a name with {@code _kg}, which becomes the file's unit, if it is a weight
   * @param value a value that {@link #cell} can print
   */
  Columns<T> add(String name, Function<? super T, ?> value) {
    names.add(name.replace("_kg", "_" + unit));
    values.add(value);
    return this;
  }

  List<String> names() {
    return List.copyOf(names);
  }

  /** The cells of a row. */
  List<String> row(T about) {
    return values.stream().map(value -> cell(value.apply(about))).toList();
  }

  /**
   * A data file with these columns.
   *
   * @param rows opens the same rows each time
   */
  Table table(String name, Supplier<Stream<T>> rows) {
    return new Table(name, names(), () -> rows.get().map(this::row));
  }

  /**
   * A value as a data file prints it. Weights have the decimals of data files, shares are
   * percentages, fractions have three decimals; an empty value is a blank cell; text is guarded.
   */
  private static String cell(Object value) {
    if (value instanceof Optional<?> perhaps) {
      return perhaps.map(Columns::cell).orElse("");
    }
    if (value instanceof Weight weight) {
      return weight.output().toPlainString();
    }
    if (value instanceof Share share) {
      return share.percent(DECIMALS).toPlainString();
    }
    if (value instanceof BigFraction fraction) {
      return Exact.round(fraction, DECIMALS).toPlainString();
    }
    if (value instanceof BigDecimal number) {
      return number.toPlainString();
    }
    return value instanceof Number ? value.toString() : guard(value.toString());
  }

  /** The root of a square in weight units, with the decimals of weights. */
  static Optional<BigDecimal> root(Optional<BigFraction> square) {
    return square.map(value -> Exact.sqrt(value, Weight.OUTPUT_DECIMALS));
  }

  /**
   * A text that no spreadsheet takes for a formula. One that looks guarded already gets another
   * quote, so that {@link #unguard} returns exactly this text.
   */
  static String guard(String text) {
    return isFormula(text) ? "'" + text : text;
  }

  /** The text of a guarded cell. */
  static String unguard(String cell) {
    return cell.startsWith("'") && isFormula(cell) ? cell.substring(1) : cell;
  }

  private static boolean isFormula(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) == '\'') {
      at++;
    }
    return at < text.length() && FORMULA.indexOf(text.charAt(at)) >= 0;
  }
}
