package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.Layout;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Scale;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Proposes how the weights of an export are read: their unit, pounds and ounces in two columns,
 * gross or net, weights below zero.
 *
 * @param scale the scale of all rows, if the shop folder says so
 * @param own the unit of the scale or the shop
 */
record ProposedWeights(
    LayoutDraft draft, GuessNumbers numbers, Optional<Scale> scale, WeightUnit own) {
  /** The line by which a weight below zero cancels an equal one. */
  static final String NEGATIVE = "negative=void";

  private static final int USUAL_GRAMS = 100;

  /** A part that hangs weighs more kilograms. */
  private static final BigDecimal LEAST_HUNG = BigDecimal.valueOf(5);

  /** No body weighs as many kilograms, let alone a pack. */
  private static final int NO_KILOGRAMS = 1500;

  void propose() {
    String field = draft.has("net") ? "net" : "gross";
    if (!draft.has(field) || addOunces() || draft.isWithheld(field)) {
      return;
    }
    var column = draft.column(field);
    String unit = GuessNumbers.unit(column);
    boolean inCells =
        column.figures().stream().allMatch(v -> v.matches("(?i).*(kg|g|lb|oz)s?\\.?"));
    var written = unitOfCells(column);
    boolean isBeside =
        Stream.of("gross", "tare")
            .filter(draft::has)
            .map(other -> unitOfCells(draft.column(other)))
            .anyMatch(Optional::isEmpty);
    if (!unit.isEmpty()) {
      draft.setting("Its weights are in " + unit + ".", "unit=" + unit);
    } else if (written.isPresent() && isBeside) {
      draft.setting("Weights beside these are in the same unit.", "unit=" + written.get());
    } else if (!draft.has("unit") && !inCells) {
      proposeUnit(field, column);
    }
    if (isGrossOrNet(field, column)) {
      draft.withhold(field);
      draft.ask(
          column.name() + " stands beside a tare: is it the weight without the tare or with it?",
          List.of(List.of(column.line("net")), List.of(column.line("gross"))));
    }
    addNegative(column);
  }

  /** The one unit that stands in all weights of a column; empty if there is none. */
  private static Optional<String> unitOfCells(Column column) {
    var units =
        column.figures().stream()
            .map(v -> GuessWords.unit(v.replaceFirst("^[^\\p{L}]*", "")))
            .distinct()
            .toList();
    return units.size() == 1 ? units.get(0) : Optional.empty();
  }

  /** Adds the columns of pounds and of ounces, if the weights stand in two; returns whether. */
  private boolean addOunces() {
    if (!isInOunces()) {
      return false;
    }
    draft.leaveOut("net");
    draft.leaveOut("gross");
    draft.setting("Pounds and ounces stand in two columns.", inUnit("lb").get().line("net"));
    draft.add(inUnit("oz").get().line(Layout.OUNCES));
    return true;
  }

  /** Whether one column has pounds and another ounces. */
  boolean isInOunces() {
    return inUnit("lb").isPresent() && inUnit("oz").isPresent();
  }

  /** The first column of numbers in a unit. */
  private Optional<Column> inUnit(String unit) {
    return draft.table().columns().stream()
        .filter(c -> GuessNumbers.unit(c).equals(unit) && GuessNumbers.isNumeric(c))
        .findFirst();
  }

  /** Whether a weight that is not called net or gross stands beside a tare above zero. */
  private boolean isGrossOrNet(String field, Column column) {
    return field.equals("net")
        && draft.has("tare")
        && !draft.has("gross")
        && !column.header().toLowerCase(Locale.ROOT).matches(".*net.*")
        && numbers
            .numbers(draft.column("tare"))
            .filter(tares -> tares.stream().anyMatch(tare -> tare.signum() != 0))
            .isPresent();
  }

  /** Whole numbers without a unit may be grams; the scale's division tells, or else the shop. */
  private void proposeUnit(String field, Column column) {
    var values = numbers.numbers(column).orElse(List.of());
    if (!mayBeGrams(values) || own != WeightUnit.KG && own != WeightUnit.LB) {
      return;
    }
    var most = values.stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
    var capacity = scale.flatMap(Scale::capacity);
    var division = scale.map(Scale::division).orElse(BigDecimal.ONE);
    boolean areSteps = own == WeightUnit.KG && areSteps(values, division.movePointRight(3));
    boolean isTooMuch =
        capacity
            .map(c -> most.compareTo(c.multiply(BigDecimal.TEN)) > 0)
            .orElseGet(() -> areSteps && !mayBeBody(0, most));
    if (isTooMuch) {
      draft.setting(
          "Its whole numbers are grams: %s %s are too much."
              .formatted(most.toPlainString(), own.id()),
          "unit=g");
      return;
    }
    draft.withhold(field);
    draft.ask(
        "Are the whole numbers of %s grams, or %s, or are the last digits decimals without a point?"
            .formatted(column.name(), own.id()),
        readings(column, field));
  }

  /** The lines of each way in which a column may be read as the net weight. */
  List<List<String>> readings(Column column) {
    return mayBeGrams(numbers.numbers(column).orElseThrow())
        ? readings(column, "net")
        : List.of(List.of(column.line("net")));
  }

  private List<List<String>> readings(Column column, String field) {
    var values = numbers.numbers(column).orElseThrow();
    var most = values.stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
    var answers = new ArrayList<List<String>>();
    boolean mayBeGrams =
        (own != WeightUnit.KG || mayHave(3, values)) && mayHang(WeightUnit.G, 0, column);
    if (mayBeGrams) {
      answers.add(List.of("unit=g", column.line(field)));
    }
    // Of a scale that is known they are grams or its unit; elsewhere a point may be missing.
    boolean isOneOfTwo = mayBeGrams && scale.isPresent();
    if (scale.flatMap(Scale::capacity).filter(c -> most.compareTo(c) > 0).isEmpty()
        && (isOneOfTwo || mayBeBody(0, most))) {
      answers.add(List.of("unit=" + own.id(), column.line(field)));
    }
    for (int decimals = 2; decimals > 0 && !isOneOfTwo; decimals--) {
      if (mayHave(decimals, values)
          && mayHang(own, decimals, column)
          && mayBeBody(decimals, most)) {
        answers.add(List.of("decimal=" + decimals, column.line(field)));
      }
    }
    return answers;
  }

  /** Whether a weight with so many decimals is not more than any body has. */
  private boolean mayBeBody(int decimals, BigDecimal weight) {
    var kilograms = own.kilograms(weight.movePointLeft(decimals));
    return kilograms.compareTo(BigDecimal.valueOf(NO_KILOGRAMS)) <= 0;
  }

  /**
   * Whether the heaviest row whose code has a word of the rail, if there is one, may be a part that
   * hangs (common practice).
   */
  private boolean mayHang(WeightUnit unit, int decimals, Column column) {
    return onRail(column)
        .max(BigDecimal::compareTo)
        .map(most -> unit.kilograms(most.movePointLeft(decimals)))
        .filter(most -> most.compareTo(LEAST_HUNG) < 0)
        .isEmpty();
  }

  /** The weights of a column in rows whose code has a word for hot or cold. */
  private Stream<BigDecimal> onRail(Column column) {
    var all = numbers.numbers(column).orElse(List.of());
    var codes = draft.cells("code");
    return IntStream.range(0, all.size() == codes.size() ? all.size() : 0)
        .filter(row -> GuessWords.railStep(codes.get(row)).isPresent())
        .mapToObj(all::get);
  }

  /** Whether a column can only be the weights, as rows of the rail have what hangs in it. */
  boolean isOfRail(Column column) {
    return onRail(column).findAny().isPresent() && readings(column).size() == 1;
  }

  /** Whether the scale, unless it is unknown, has steps of these weights with a point in them. */
  private boolean mayHave(int decimals, List<BigDecimal> weights) {
    return scale
        .map(known -> known.division().movePointRight(decimals))
        .filter(step -> !areMultiples(weights, step))
        .isEmpty();
  }

  /** Whether a column holds whole numbers of steps of the scale in grams. */
  boolean isInSteps(Column column) {
    var values = numbers.numbers(column).orElse(List.of());
    return mayBeGrams(values)
        && scale.filter(s -> areSteps(values, s.division().movePointRight(3))).isPresent();
  }

  /** Whether weights, some of them different, are all multiples of a step. */
  private static boolean areSteps(List<BigDecimal> weights, BigDecimal step) {
    return weights.stream().distinct().count() > GuessNumbers.SOME && areMultiples(weights, step);
  }

  private static boolean areMultiples(List<BigDecimal> weights, BigDecimal step) {
    return weights.stream().allMatch(weight -> weight.remainder(step).signum() == 0);
  }

  /** Whether all weights are whole numbers, and some so large that they may be grams. */
  private static boolean mayBeGrams(List<BigDecimal> weights) {
    return weights.stream().allMatch(weight -> weight.scale() <= 0)
        && weights.stream().anyMatch(weight -> weight.intValue() >= USUAL_GRAMS);
  }

  private void addNegative(Column column) {
    var all = numbers.numbers(column).orElse(List.of());
    var below =
        IntStream.range(0, all.size()).filter(i -> all.get(i).signum() < 0).boxed().toList();
    boolean pairs =
        below.stream()
            .allMatch(
                i -> all.subList(0, i).stream().anyMatch(n -> n.add(all.get(i)).signum() == 0));
    if (all.size() == column.cells().size() && !below.isEmpty() && pairs) {
      draft.setting(
          "A weight below zero cancels the row before it with that weight, of the same body and"
              + " code.",
          NEGATIVE);
    }
  }
}
