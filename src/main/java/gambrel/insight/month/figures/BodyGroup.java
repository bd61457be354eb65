package gambrel.insight.month.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Bodies of a species that agree in one property.
 *
 * @param split the property
 * @param name their class; empty for other splits
 * @param from lower end, included; empty for none
 * @param to upper end, excluded; empty for none
 */
public record BodyGroup(
    Split split, String name, Optional<BigDecimal> from, Optional<BigDecimal> to)
    implements MonthFigure.Group {
  /** All bodies of the species. */
  public static final BodyGroup ALL =
      new BodyGroup(Split.ALL, "", Optional.empty(), Optional.empty());

  private static final List<BigDecimal> WEEKS =
      Stream.of(8, 15, 22).map(BigDecimal::valueOf).toList();

  /** A property by which the bodies of a species are divided into groups. */
  public enum Split {
    /** None: all bodies are one group. */
    ALL,
    /** The class that the shop gives the body. */
    CATEGORY,
    /** Days hung, by weeks. */
    DAYS,
    /** Fat depth, by thirds of the shop's bodies. */
    FAT,
    /** Hot weight, by thirds of the shop's bodies. */
    WEIGHT;

    /** Its name in data files and words. */
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The body's number; empty if unknown, or if the property is no number. */
    private Optional<BigDecimal> value(MonthBody body) {
      return switch (this) {
        case ALL, CATEGORY -> Optional.empty();
        case DAYS -> body.balance().daysHung().map(BigDecimal::valueOf);
        case FAT -> number(body.body().fatMillimetres());
        case WEIGHT -> body.balance().hot().map(weight -> weight.decimal());
      };
    }

    /** A depth as a number; empty if the text is not one. */
    private static Optional<BigDecimal> number(String text) {
      return text.matches("\\d{1,4}([.,]\\d{1,3})?")
          ? Optional.of(new BigDecimal(text.replace(',', '.')))
          : Optional.empty();
    }
  }

  /** The groups that a split makes of {@code bodies}; none if the property is unknown of all. */
  public static List<BodyGroup> of(Split split, List<MonthBody> bodies) {
    return switch (split) {
      case ALL -> List.of(ALL);
      case CATEGORY ->
          bodies.stream()
              .map(BodyGroup::category)
              .filter(name -> !name.isEmpty())
              .distinct()
              .sorted()
              .map(name -> new BodyGroup(split, name, Optional.empty(), Optional.empty()))
              .toList();
      case DAYS -> between(split, WEEKS);
      case FAT, WEIGHT ->
          between(split, thirds(bodies.stream().flatMap(b -> split.value(b).stream())));
    };
  }

  private static String category(MonthBody body) {
    return body.body().category().strip().toLowerCase(Locale.ROOT);
  }

  /** The values below which a third and two thirds of the values lie, as whole numbers. */
  private static List<BigDecimal> thirds(Stream<BigDecimal> values) {
    var sorted = values.sorted().toList();
    return IntStream.of(1, 2)
        .filter(third -> !sorted.isEmpty())
        .mapToObj(third -> sorted.get(sorted.size() * third / 3))
        .map(value -> value.setScale(0, RoundingMode.HALF_UP))
        .distinct()
        .toList();
  }

  private static List<BodyGroup> between(Split split, List<BigDecimal> bounds) {
    int last = bounds.size();
    return IntStream.range(0, last == 0 ? 0 : last + 1)
        .mapToObj(
            i ->
                new BodyGroup(
                    split,
                    "",
                    i == 0 ? Optional.empty() : Optional.of(bounds.get(i - 1)),
                    i == last ? Optional.empty() : Optional.of(bounds.get(i))))
        .toList();
  }

  /** Whether a body belongs to the group. */
  public boolean holds(MonthBody body) {
    return switch (split) {
      case ALL -> true;
      case CATEGORY -> category(body).equals(name);
      case DAYS, FAT, WEIGHT -> split.value(body).filter(this::holds).isPresent();
    };
  }

  private boolean holds(BigDecimal value) {
    return from.filter(f -> value.compareTo(f) < 0).isEmpty()
        && to.filter(t -> value.compareTo(t) >= 0).isEmpty();
  }

  /** Its name in data files: {@code days 8-15}, {@code category steer}; empty for all. */
  @Override
  public String id() {
    return switch (split) {
      case ALL -> "";
      case CATEGORY -> split.id() + ' ' + name;
      case DAYS, FAT, WEIGHT -> split.id() + ' ' + text(from) + '-' + text(to);
    };
  }

  private static String text(Optional<BigDecimal> bound) {
    return bound.map(BigDecimal::toPlainString).orElse("");
  }
}
