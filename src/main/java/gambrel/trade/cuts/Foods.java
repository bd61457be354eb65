package gambrel.trade.cuts;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The kinds of food, as {@code food.csv} lists them with their sources.
 *
 * @param fridge the highest temperature of a fridge
 * @param freezer the highest temperature of a freezer
 * @param all the kinds, in the order in which a page lists them
 */
public record Foods(Food.Temperature fridge, Food.Temperature freezer, List<Food> all) {
  /** Copies the list. */
  public Foods {
    all = List.copyOf(all);
  }

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
