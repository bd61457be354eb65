package gambrel.trade.cuts;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The kinds of food, as {@code food.csv} lists them with their sources. Temperatures are in the
 * region's degrees: Fahrenheit in the US, else Celsius.
 *
 * @param fridge the highest temperature of a fridge
 * @param freezer the highest temperature of a freezer
 * @param all the kinds, in the order in which a page lists them
 */
public record Foods(BigDecimal fridge, BigDecimal freezer, List<Food> all) {
  private static final Set<Kind> EATEN =
      EnumSet.of(Kind.CARCASE, Kind.PIECE, Kind.MEAT, Kind.TRIM, Kind.OFFAL);

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
   * @param minutes minutes that belong to the cooking: in the UK at that temperature, else of rest
   *     after it; empty if none
   */
  public record Food(
      String id,
      Optional<Kind> kind,
      Set<Species> species,
      Optional<Span> fridgeDays,
      Optional<Span> freezerMonths,
      Optional<BigDecimal> cooked,
      Optional<Integer> minutes) {
    /** Copies the species. */
    public Food {
      species = Set.copyOf(species);
    }
  }

  /** A span of days or months, both ends included; they are equal for one published number. */
  public record Span(int least, int most) {}

  /**
   * The kind of food of an item: the one that its row names, else the one for its kind, else the
   * one of the nearest item above that names one. Empty for an unknown item, for bone, fat and
   * waste, for meat if no row names a food, and for a species that the source does not cover.
   */
  public Optional<Food> of(CutTree tree, String item) {
    return tree.find(item)
        .filter(i -> EATEN.contains(i.kind()))
        .flatMap(i -> i.facts().food().or(() -> ofKind(i.kind())).or(() -> tree.facts(item).food()))
        .flatMap(
            id -> find(food -> food.id().equals(id) && food.species().contains(tree.species())));
  }

  private Optional<String> ofKind(Kind kind) {
    return find(food -> food.kind().filter(kind::equals).isPresent()).map(Food::id);
  }

  private Optional<Food> find(Predicate<Food> which) {
    return all.stream().filter(which).findFirst();
  }
}
