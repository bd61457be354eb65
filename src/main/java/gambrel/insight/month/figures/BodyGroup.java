package gambrel.insight.month.figures;

import gambrel.trade.measure.FileWord;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Bodies of a species that agree in one property.
 *
 * @param split the property
 * @param name their class, day, chiller, scale or boner; empty for other splits
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
  public enum Split implements FileWord {
    /** None: all bodies are one group. */
    ALL,
    /** The class that the shop gives the body. */
    CATEGORY,
    /** Days hung, by weeks. */
    DAYS,
    /** Fat depth, by thirds of the shop's bodies. */
    FAT,
    /** Hot weight, by thirds of the shop's bodies. */
    WEIGHT,
    /** The day of the kill. */
    KILLED,
    /** The chiller that they hang in. */
    CHILLER,
    /** The scale that weighed them hot and cold. */
    HUNG_SCALE,
    /** The day of the last cut. */
    CUT,
    /** The scale that weighed what came of them. */
    BENCH_SCALE,
    /** Who boned them. */
    BONER;

    /** The splits by owner. */
    public static final List<Split> BY_OWNER = List.of(ALL, CATEGORY, DAYS, FAT, WEIGHT);

    @Override
    public String id() {
      return switch (this) {
        case KILLED, CUT -> "day";
        case HUNG_SCALE, BENCH_SCALE -> "scale";
        default -> FileWord.super.id();
      };
    }

    /** The places and days of a loss. Their figures are of the bodies of all owners. */
    public static List<Split> places(BodyFigure loss) {
      return switch (loss) {
        case CHILL -> List.of(KILLED, CHILLER, HUNG_SCALE);
        case BENCH -> List.of(CUT, BENCH_SCALE, BONER);
        default -> List.of();
      };
    }

    /** The body's class, day, chiller, scale or boner; empty if unknown, or for other splits. */
    private Optional<String> name(MonthBody body) {
      var name =
          switch (this) {
            case CATEGORY -> Optional.of(body.body().category().strip().toLowerCase(Locale.ROOT));
            case KILLED -> body.body().killed().map(LocalDate::toString);
            case CHILLER -> Optional.of(body.body().chiller());
            case HUNG_SCALE -> body.hungScale();
            case CUT -> body.balance().lastCut().map(time -> time.toLocalDate().toString());
            case BENCH_SCALE -> body.benchScale();
            case BONER -> body.boner();
            case ALL, DAYS, FAT, WEIGHT -> Optional.<String>empty();
          };
      return name.filter(text -> !text.isEmpty());
    }

    /** The body's number; empty if unknown, or if the property is no number. */
    private Optional<BigDecimal> value(MonthBody body) {
      return switch (this) {
        case DAYS -> body.balance().daysHung().map(BigDecimal::valueOf);
        case FAT -> number(body.body().fatMillimetres());
        case WEIGHT -> body.balance().hot().map(weight -> weight.decimal());
        default -> Optional.empty();
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
      case CATEGORY, KILLED, CHILLER, HUNG_SCALE, CUT, BENCH_SCALE, BONER ->
          bodies.stream()
              .flatMap(body -> split.name(body).stream())
              .distinct()
              .sorted()
              .map(name -> new BodyGroup(split, name, Optional.empty(), Optional.empty()))
              .toList();
      case DAYS -> between(split, WEEKS);
      case FAT, WEIGHT ->
          between(split, thirds(bodies.stream().flatMap(b -> split.value(b).stream())));
    };
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
      case DAYS, FAT, WEIGHT -> split.value(body).filter(this::holds).isPresent();
      default -> split.name(body).filter(name::equals).isPresent();
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
      case DAYS, FAT, WEIGHT -> split.id() + ' ' + text(from) + '-' + text(to);
      default -> split.id() + ' ' + name;
    };
  }

  private static String text(Optional<BigDecimal> bound) {
    return bound.map(BigDecimal::toPlainString).orElse("");
  }
}
