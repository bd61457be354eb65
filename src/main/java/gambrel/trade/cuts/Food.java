package gambrel.trade.cuts;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * A kind of food, with published advice on keeping and cooking it.
 *
 * @param id its name in the cut tables and in the words files, such as {@code roasts}
 * @param kind items of this kind are this food if their own row names none; empty for no kind
 * @param species the species whose meat the source covers
 * @param fridgeDays days in the fridge; empty if the source gives none
 * @param freezerMonths months in the freezer; empty if the source gives none
 * @param cooked the least core temperature of cooked food; empty if the source gives none
 * @param restMinutes minutes of rest that belong to the cooking; empty if none
 */
public record Food(
    String id,
    Optional<Kind> kind,
    Set<Species> species,
    Optional<Span> fridgeDays,
    Optional<Span> freezerMonths,
    Optional<Temperature> cooked,
    Optional<Integer> restMinutes) {
  /** Copies the species. */
  public Food {
    species = Set.copyOf(species);
  }

  /** A span of days or months, both ends included; they are equal for one published number. */
  public record Span(int least, int most) {}

  /** A temperature in both scales, as published. */
  public record Temperature(BigDecimal celsius, BigDecimal fahrenheit) {}
}
