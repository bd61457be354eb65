package gambrel.files.guess;

import gambrel.files.csv.BadCell;
import gambrel.files.layout.Numerals;
import gambrel.files.layout.WeightText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the marks of the numbers in a table, and the unit of its weights. */
final class GuessNumbers {
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?i)[+-]?\\s*(\\d+|\\d{1,3}([.,' \u00A0\u202F]\\d{3})+)([.,]\\d+)?"
              + "\\s*(kg|g|lbs?|oz)?\\.?(\\s*\\d.*oz\\.?)?");
  private static final Pattern BOTH_UNITS = Pattern.compile("(?i).*\\blbs?\\b.*\\boz\\b.*");
  private static final Pattern UNIT = Pattern.compile("(?i).*\\b(kg|g|lb|oz)\\b.*");

  /** The last mark of a number that is not one of thousands for sure. */
  private static final Pattern COMMA =
      Pattern.compile(".*\\.\\d{3},\\d+\\D*|[+-]?0,\\d+\\D*|[^.,]*,(?!\\d{3}(\\D|$)).*");

  private static final Pattern POINT =
      Pattern.compile(".*,\\d{3}\\.\\d+\\D*|[+-]?0\\.\\d+\\D*|[^.,]*\\.(?!\\d{3}(\\D|$)).*");
  private static final Pattern GROUPED =
      Pattern.compile("[+-]?\\d{1,3}([.,' \u00A0\u202F])\\d{3}([.,' \u00A0\u202F]).*");

  private final List<String> texts;

  /** Looks at all cells of the table that are numbers. */
  GuessNumbers(GuessTable table) {
    texts =
        table.columns().stream()
            .filter(GuessNumbers::isNumeric)
            .flatMap(column -> column.values().stream())
            .toList();
  }

  /** Whether every value of a column is a number, maybe with a unit. */
  static boolean isNumeric(GuessTable.Column column) {
    return !column.values().isEmpty()
        && column.values().stream().allMatch(value -> NUMBER.matcher(value).matches());
  }

  /** Whether the decimal mark is a comma. */
  boolean hasDecimalComma() {
    return count(COMMA) > count(POINT) || undecided() && texts.stream().anyMatch(t -> has(t, ','));
  }

  /** Whether marks stand there and each could be one of decimals or one of thousands. */
  boolean undecided() {
    return count(COMMA) == 0
        && count(POINT) == 0
        && texts.stream().anyMatch(text -> has(text, ',') || has(text, '.'));
  }

  private long count(Pattern pattern) {
    return texts.stream().filter(text -> pattern.matcher(text).matches()).count();
  }

  private static boolean has(String text, char mark) {
    return text.indexOf(mark) >= 0;
  }

  /** The mark between thousands, if there is one. */
  Optional<Character> thousands() {
    for (String text : texts) {
      var groups = GROUPED.matcher(text);
      if (groups.matches()) {
        char mark = groups.group(1).charAt(0);
        return Optional.of(mark == '\u00A0' || mark == '\u202F' ? ' ' : mark);
      }
    }
    return Optional.empty();
  }

  /** The unit that the cells carry or the header names, as a layout writes it; or empty. */
  static String unit(GuessTable.Column column) {
    if (column.values().stream().anyMatch(value -> BOTH_UNITS.matcher(value).matches())) {
      return "lb-oz";
    }
    var named = UNIT.matcher(column.header());
    return named.matches() ? named.group(1).toLowerCase(Locale.ROOT) : "";
  }

  /** The values of a column as numbers; empty if one is none. */
  Optional<List<BigDecimal>> numbers(GuessTable.Column column) {
    char decimal = hasDecimalComma() ? ',' : '.';
    var mark = thousands().filter(c -> c != decimal);
    var type = new WeightText(new Numerals(decimal, mark), false);
    try {
      var numbers = new ArrayList<BigDecimal>();
      column.values().forEach(value -> numbers.add(type.read(value).value()));
      return Optional.of(numbers);
    } catch (BadCell e) {
      return Optional.empty();
    }
  }

  /** Columns of which gross less tare is net in every row. */
  record Sum(GuessTable.Column gross, GuessTable.Column tare, GuessTable.Column net) {}

  /** Every such three columns of a table. */
  List<Sum> sums(GuessTable table) {
    var columns = new LinkedHashMap<GuessTable.Column, List<BigDecimal>>();
    for (var column : table.columns()) {
      numbers(column).ifPresent(values -> columns.put(column, values));
    }
    var sums = new ArrayList<Sum>();
    for (var gross : columns.keySet()) {
      for (var tare : columns.keySet()) {
        for (var net : columns.keySet()) {
          if (isDifference(columns.get(gross), columns.get(tare), columns.get(net))) {
            sums.add(new Sum(gross, tare, net));
          }
        }
      }
    }
    return sums;
  }

  private static boolean isDifference(
      List<BigDecimal> gross, List<BigDecimal> tare, List<BigDecimal> net) {
    if (gross.size() < 2 || gross.size() != tare.size() || gross.size() != net.size()) {
      return false;
    }
    boolean tared = false;
    for (int i = 0; i < gross.size(); i++) {
      if (gross.get(i).subtract(tare.get(i)).compareTo(net.get(i)) != 0) {
        return false;
      }
      // Of the two that add up to gross, the tare is the lighter.
      tared |= tare.get(i).signum() != 0 && tare.get(i).compareTo(net.get(i)) < 0;
    }
    return tared;
  }
}
