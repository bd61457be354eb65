package gambrel.insight.month.bodies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

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
    implements FigureGroup {
  /** All bodies of the species. */
  public static final BodyGroup ALL =
      new BodyGroup(Split.ALL, "", Optional.empty(), Optional.empty());

  private static final List<BigDecimal> WEEKS =
      List.of(BigDecimal.valueOf(8), BigDecimal.valueOf(15), BigDecimal.valueOf(22));

  /** The groups that a split makes of {@code bodies}; none if the property is unknown of all. */
  public static List<BodyGroup> of(Split split, List<MonthBody> bodies) {
    return switch (split) {
      case ALL -> List.of(ALL);
      case CATEGORY -> categories(bodies);
      case DAYS -> between(split, WEEKS);
      case FAT, WEIGHT -> between(split, thirds(split, bodies));
    };
  }

  private static List<BodyGroup> categories(List<MonthBody> bodies) {
    var names = new TreeSet<String>();
    bodies.forEach(b -> names.add(category(b)));
    names.remove("");
    return names.stream()
        .map(name -> new BodyGroup(Split.CATEGORY, name, Optional.empty(), Optional.empty()))
        .toList();
  }

  private static String category(MonthBody body) {
    return body.body().category().strip().toLowerCase(Locale.ROOT);
  }

  /** The values below which a third and two thirds of the bodies lie, as whole numbers. */
  private static List<BigDecimal> thirds(Split split, List<MonthBody> bodies) {
    var values = bodies.stream().flatMap(b -> split.value(b).stream()).sorted().toList();
    if (values.isEmpty()) {
      return List.of();
    }
    var bounds = new TreeSet<BigDecimal>();
    for (int third = 1; third <= 2; third++) {
      bounds.add(values.get(values.size() * third / 3).setScale(0, RoundingMode.HALF_UP));
    }
    return List.copyOf(bounds);
  }

  private static List<BodyGroup> between(Split split, List<BigDecimal> bounds) {
    var bands = new ArrayList<BodyGroup>();
    Optional<BigDecimal> from = Optional.empty();
    for (var bound : bounds) {
      bands.add(new BodyGroup(split, "", from, Optional.of(bound)));
      from = Optional.of(bound);
    }
    if (!bounds.isEmpty()) {
      bands.add(new BodyGroup(split, "", from, Optional.empty()));
    }
    return bands;
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
    if (split == Split.ALL) {
      return "";
    }
    String ends = text(from) + "-" + text(to);
    return split.id() + " " + (split == Split.CATEGORY ? name : ends);
  }

  private static String text(Optional<BigDecimal> bound) {
    return bound.map(BigDecimal::toPlainString).orElse("");
  }
}
