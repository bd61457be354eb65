package gambrel.trade.cuts;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The kinds of food, as {@code food.csv} lists them with their sources.
 *
 * @param fridge the highest temperature of a fridge
 * @param freezer the highest temperature of a freezer
 * @param all the kinds, in the order in which a page lists them
 */
public record Foods(Temperature fridge, Temperature freezer, List<Food> all) {
  /** Copies the list. */
  public Foods {
    all = List.copyOf(all);
  }

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
  }

  /** A span of days or months, both ends included; they are equal for one published number. */
  public record Span(int least, int most) {}

  /** A temperature in both scales, as published. */
  public record Temperature(BigDecimal celsius, BigDecimal fahrenheit) {}

  /**
   * The kind of food of an item: the one that its row names, else the one for its kind, else the
   * one of the nearest item above that names one. Empty for an unknown item, for bone, fat and
   * waste, for meat if no row names a food, and for a species that the source does not cover.
   */
  public Optional<Food> of(CutTree tree, String item) {
    return tree.find(item)
        .filter(i -> i.kind() == Kind.MEAT || i.kind() == Kind.TRIM || i.kind() == Kind.OFFAL)
        .flatMap(
            i ->
                named(i.facts().food())
                    .or(() -> find(food -> food.kind().filter(i.kind()::equals).isPresent()))
                    .or(() -> named(tree.facts(item).food())))
        .filter(food -> food.species().contains(tree.species()));
  }

  private Optional<Food> named(Optional<String> id) {
    return id.flatMap(name -> find(food -> food.id().equals(name)));
  }

  private Optional<Food> find(Predicate<Food> which) {
    return all.stream().filter(which).findFirst();
  }
}
