package gambrel.insight.month.figures;

import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A figure of one species in a month, and the same figure of the twelve months before.
 *
 * @param <T> the type of the figure
 * @param species the species
 * @param month the figure of the month
 * @param before the figure of the twelve months before
 */
public record Compared<T>(Species species, T month, T before) {
  /** The bodies of each species, for every species in order; lists may be empty. */
  public static List<Compared<List<MonthBody>>> bySpecies(
      List<MonthBody> month, List<MonthBody> before) {
    return Stream.of(Species.values())
        .map(s -> new Compared<>(s, MonthBody.of(s, month), MonthBody.of(s, before)))
        .toList();
  }

  /** The bodies of the twelve months before, then those of the month. */
  public static List<MonthBody> all(Compared<List<MonthBody>> bodies) {
    return Stream.concat(bodies.before().stream(), bodies.month().stream()).toList();
  }

  /** Another figure, drawn from this one. */
  public <U> Compared<U> map(Function<? super T, U> figure) {
    return new Compared<>(species, figure.apply(month), figure.apply(before));
  }
}
