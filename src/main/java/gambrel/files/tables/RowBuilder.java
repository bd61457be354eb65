package gambrel.files.tables;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Builds one row: numbers plain, text guarded against spreadsheets that take it for a formula. */
final class RowBuilder {
  /** Decimals of a percentage. */
  static final int PERCENT = 3;

  private static final String FORMULA = "=+-@\t\r";

  private final List<String> cells = new ArrayList<>();

  RowBuilder text(String text) {
    cells.add(guard(text));
    return this;
  }

  RowBuilder weight(Weight weight) {
    cells.add(weight.output().toPlainString());
    return this;
  }

  RowBuilder weight(Optional<Weight> weight) {
    return optional(weight.map(Weight::output));
  }

  RowBuilder percent(Optional<BigFraction> percent) {
    return optional(percent.map(value -> Exact.round(value, PERCENT)));
  }

  RowBuilder share(Optional<Share> share) {
    return percent(share.map(Share::percent));
  }

  RowBuilder root(Optional<BigFraction> square) {
    return optional(square.map(value -> Exact.sqrt(value, Weight.OUTPUT_DECIMALS)));
  }

  RowBuilder number(long number) {
    cells.add(Long.toString(number));
    return this;
  }

  RowBuilder number(Optional<Integer> number) {
    cells.add(number.map(String::valueOf).orElse(""));
    return this;
  }

  RowBuilder decimal(BigDecimal number) {
    cells.add(number.toPlainString());
    return this;
  }

  RowBuilder optional(Optional<BigDecimal> number) {
    cells.add(number.map(BigDecimal::toPlainString).orElse(""));
    return this;
  }

  RowBuilder blank() {
    cells.add("");
    return this;
  }

  List<String> cells() {
    return cells;
  }

  /**
   * A text that no spreadsheet takes for a formula. One that looks as if it were guarded already
   * gets a quote more, so that {@link #unguard} gives back exactly what was there.
   */
  static String guard(String text) {
    return isFormula(text) ? "'" + text : text;
  }

  /** Whether, behind quotes, it begins like a formula. */
  private static boolean isFormula(String text) {
    int at = 0;
    while (at < text.length() && text.charAt(at) == '\'') {
      at++;
    }
    return at < text.length() && FORMULA.indexOf(text.charAt(at)) >= 0;
  }

  /** Takes a guard off again. */
  static String unguard(String cell) {
    return cell.startsWith("'") && isFormula(cell) ? cell.substring(1) : cell;
  }
}
