package gambrel.files.guess;

import gambrel.files.csv.BadCell;
import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.WeightText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the marks of the numbers in a table, and the unit of its weights. */
final class GuessNumbers {
  /** The blanks that may stand between thousands, for a class of characters. */
  static final String BLANKS = " \u00A0\u2009\u202F";

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?i)[+-]?\\s*(\\d+|\\d{1,3}("
              + "[.,'’"
              + BLANKS
              + "]\\d{3})+)([.,]\\d+)?"
              + "\\h*-?\\h*((kgs?|g|lbs?|oz)\\.?"
              + WeightText.KIND
              + ")?\\.?(\\s*\\d.*oz\\.?)?");
  private static final Pattern BOTH_UNITS = Pattern.compile("(?i).*\\blbs?\\b.*\\boz\\b.*");
  private static final Pattern UNIT =
      Pattern.compile(
          "(?i).*(?<!\\p{L})(kg|g|lb|oz)(?:s|ms|rams?|ramme?)?(?!\\p{L}).*", Pattern.UNICODE_CASE);

  /** Marks of decimals, each with one between thousands or none; the more usual first. */
  private static final List<String> MARKS = List.of(".", ",", ".,", ",.", ". ", ", ", ".'", ",'");

  private static final Predicate<String> IS_NUMBER = NUMBER.asMatchPredicate();

  /** A column of numbers may have one wrong figure in so many. */
  static final int ONE_WRONG_OF = 50;

  /** What holds in so many rows is no chance. */
  static final int SOME = 4;

  /** The one of {@link #MARKS} by which most columns can be read. */
  private final String marks;

  private final Map<Column, Optional<List<BigDecimal>>> numbers = new IdentityHashMap<>();

  /** Reads all columns of the table that hold only numbers. */
  GuessNumbers(GuessTable table) {
    boolean byRow = table.columns().stream().anyMatch(GuessNumbers::isOfManyUnits);
    boolean grams =
        !byRow && table.columns().stream().anyMatch(c -> isNumeric(c) ? isInGrams(c) : isGrams(c));
    var numeric = table.columns().stream().filter(c -> isNumeric(c) && !isTime(c)).toList();
    // Where all marks stand before three digits, they are of thousands if the weights are in grams.
    var first = MARKS.stream().filter(both -> grams && isOfThousands(both, numeric));
    var legible = new LinkedHashMap<String, Long>();
    Stream.concat(first, MARKS.stream())
        .forEach(
            both ->
                legible.put(both, numeric.stream().filter(c -> read(c, both).isPresent()).count()));
    marks = Collections.max(legible.entrySet(), Map.Entry.comparingByValue()).getKey();
    table.columns().forEach(column -> numbers.put(column, read(column, marks)));
  }

  /** Whether a column's values are numbers, maybe with a unit. */
  static boolean isNumeric(Column column) {
    return !column.values().isEmpty() && legible(column).stream().allMatch(IS_NUMBER);
  }

  /** Whether letters behind the units do not call some weights gross or tare and others net. */
  private static boolean isOfOneKind(Column column) {
    var kinds =
        column.values().stream()
            .map(value -> value.replaceFirst(".*[^\\p{L}]", "").toUpperCase(Locale.ROOT))
            .filter(kind -> kind.matches("[GNT]|GS|NT"))
            .distinct();
    return kinds.count() < 2;
  }

  /**
   * The figures of a column without those that are no numbers, if these are few, as typed wrong.
   */
  private static List<String> legible(Column column) {
    var figures = column.figures();
    var numbers = figures.stream().filter(IS_NUMBER).toList();
    return numbers.size() * ONE_WRONG_OF >= figures.size() * (ONE_WRONG_OF - 1) ? numbers : figures;
  }

  /**
   * Whether weights are in grams by their unit, or because some have three digits after a mark and
   * others no mark: a scale writes its decimals in every row.
   */
  private static boolean isInGrams(Column column) {
    var values = column.values();
    return unit(column).equals("g")
        || values.stream().allMatch(value -> value.matches("(?i)[^a-z]*g\\.?"))
        || values.stream().anyMatch(value -> value.matches("\\d{1,3}[.,]\\d{3}"))
            && values.stream().anyMatch(value -> value.matches("\\d{1,3}"))
            && values.stream().allMatch(value -> value.matches("\\d{1,3}([.,]\\d{3})?"));
  }

  /**
   * Whether rows have units of their own, of which one is not grams: then what has three digits
   * after a mark is in the larger unit.
   */
  private static boolean isOfManyUnits(Column column) {
    return column.values().stream().distinct().count() > 1
        && column.values().stream().allMatch(GuessWords::isUnit)
        && !isGrams(column);
  }

  /** Whether a column holds the unit of weights in grams. */
  private static boolean isGrams(Column column) {
    return !column.values().isEmpty()
        && column.values().stream().map(GuessWords::unit).allMatch(Optional.of("g")::equals);
  }

  /** Whether a column may hold clock times such as 9.05, by its name. */
  private static boolean isTime(Column column) {
    return Stream.of("time", "clock", "date")
        .anyMatch(field -> GuessWords.score(field, column.header()) > 0);
  }

  /** Whether one of two marks is a point or comma between thousands, and stands in a column. */
  private static boolean isOfThousands(String marks, List<Column> columns) {
    return marks.matches("[.,]{2}")
        && columns.stream()
            .flatMap(column -> column.values().stream())
            .anyMatch(value -> value.indexOf(marks.charAt(1)) >= 0);
  }

  boolean hasDecimalComma() {
    return marks.charAt(0) == ',';
  }

  /** The mark between thousands, if there is one. */
  Optional<Character> thousands() {
    return thousands(marks);
  }

  private static Optional<Character> thousands(String marks) {
    return marks.chars().skip(1).mapToObj(mark -> (char) mark).findFirst();
  }

  /** The unit that cells, header or the line below it name, as a layout writes it; or empty. */
  static String unit(Column column) {
    if (column.values().stream().anyMatch(value -> BOTH_UNITS.matcher(value).matches())) {
      return "lb-oz";
    }
    return Stream.of(column.unit(), GuessWords.spaced(column.header()))
        .map(UNIT::matcher)
        .filter(Matcher::matches)
        .map(named -> named.group(1).toLowerCase(Locale.ROOT))
        .findFirst()
        .orElse("");
  }

  /** The values of a column as numbers; empty if one of them is no number. */
  Optional<List<BigDecimal>> numbers(Column column) {
    var known = numbers.get(column);
    return known == null ? read(column, marks) : known;
  }

  private static Optional<List<BigDecimal>> read(Column column, String marks) {
    if (!isOfOneKind(column)) {
      return Optional.empty();
    }
    var type = new WeightText(marks.charAt(0), thousands(marks), false, 0);
    try {
      return Optional.of(legible(column).stream().map(v -> type.read(v).value()).toList());
    } catch (BadCell e) {
      return Optional.empty();
    }
  }

  /** Every three columns of which gross less tare is net in each row, by field. */
  List<Map<String, Column>> sums(GuessTable table) {
    var columns = new LinkedHashMap<Column, List<BigDecimal>>();
    for (var column : table.columns()) {
      numbers(column).ifPresent(values -> columns.put(column, values));
    }
    var sums = new ArrayList<Map<String, Column>>();
    for (var gross : columns.keySet()) {
      for (var tare : columns.keySet()) {
        for (var net : columns.keySet()) {
          boolean inOrder =
              gross.number() + 1 == tare.number() && tare.number() + 1 == net.number();
          if (isDifference(columns.get(gross), columns.get(tare), columns.get(net), inOrder)) {
            sums.add(Map.of("gross", gross, "tare", tare, "net", net));
          }
        }
      }
    }
    return sums.stream()
        .filter(
            sum ->
                sums.stream()
                    .filter(other -> other.get("gross") == sum.get("gross"))
                    .filter(other -> other.get("tare") == sum.get("net"))
                    .noneMatch(other -> likelihood(other) > likelihood(sum)))
        .toList();
  }

  /**
   * How likely it is that tare and net of a sum are not exchanged: names decide, then in how many
   * rows the tare is the lighter.
   */
  private long likelihood(Map<String, Column> sum) {
    var tare = numbers(sum.get("tare")).orElseThrow();
    var net = numbers(sum.get("net")).orElseThrow();
    long named =
        sum.entrySet().stream()
            .mapToLong(one -> GuessWords.score(one.getKey(), one.getValue().title()))
            .sum();
    long lighter =
        IntStream.range(0, net.size())
            .filter(i -> tare.get(i).abs().compareTo(net.get(i).abs()) < 0)
            .count();
    return named * (net.size() + 1) + lighter;
  }

  /** Whether a column is the same amount above or below another one, as gross and net are. */
  Optional<BigDecimal> above(Column column, Column other) {
    var ones = numbers(column).orElse(List.of());
    var others = numbers(other).orElse(List.of());
    boolean alike = ones.size() > SOME && ones.size() == others.size();
    var differences =
        IntStream.range(0, alike ? ones.size() : 0)
            .mapToObj(i -> ones.get(i).subtract(others.get(i)).stripTrailingZeros())
            .distinct()
            .toList();
    return differences.stream().filter(d -> differences.size() == 1).findFirst();
  }

  /** Whether each value of a column is the one above it and that of another column together. */
  boolean isRunningTotal(GuessTable table, Column column) {
    var totals = numbers(column).orElse(List.of());
    return table.columns().stream()
        .filter(other -> other.number() != column.number())
        .anyMatch(other -> addsUp(totals, numbers(other).orElse(List.of())));
  }

  private static boolean addsUp(List<BigDecimal> totals, List<BigDecimal> items) {
    return totals.size() > 2
        && totals.size() == items.size()
        && items.stream().anyMatch(item -> item.signum() != 0)
        && IntStream.range(1, totals.size())
            .allMatch(i -> totals.get(i - 1).add(items.get(i)).compareTo(totals.get(i)) == 0);
  }

  /**
   * Whether gross less tare is net in each row. Where no tare was taken off, only their usual order
   * shows which is which.
   */
  private static boolean isDifference(
      List<BigDecimal> gross, List<BigDecimal> tare, List<BigDecimal> net, boolean inOrder) {
    if (gross.size() < 2 || gross.size() != tare.size() || gross.size() != net.size()) {
      return false;
    }
    boolean tared = inOrder && tare.stream().allMatch(weight -> weight.signum() == 0);
    for (int i = 0; i < gross.size(); i++) {
      if (gross.get(i).subtract(tare.get(i)).compareTo(net.get(i)) != 0) {
        return false;
      }
      // Of the two that add up to gross, the tare is the lighter in some rows.
      tared |= tare.get(i).signum() != 0 && tare.get(i).abs().compareTo(net.get(i).abs()) < 0;
    }
    return tared;
  }
}
