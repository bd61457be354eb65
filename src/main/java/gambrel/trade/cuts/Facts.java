package gambrel.trade.cuts;

import java.util.Optional;

/**
 * Facts of the trade about an item: columns of the cut tables. An item inherits each fact that is
 * empty from the item that it comes from; {@link CutTree#facts} includes the inherited facts.
 *
 * @param food the id of its {@link Foods.Food}
 * @param bone whether it has bone in it when it is packed under its own name
 * @param vertebra whether it has vertebrae in it when it is packed under its own name, as the rules
 *     on specified risk material ask
 * @param minced whether it is made of minced meat
 * @param offal the line of the customer's page that lists it, if it is offal
 */
public record Facts(
    Optional<String> food,
    Optional<Boolean> bone,
    Optional<Boolean> vertebra,
    Optional<Boolean> minced,
    Optional<Offal> offal) {
  /** No fact of its own. */
  public static final Facts INHERITED =
      new Facts(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** These facts; each empty one is taken from the item above. */
  Facts over(Facts above) {
    return new Facts(
        food.or(above::food),
        bone.or(above::bone),
        vertebra.or(above::vertebra),
        minced.or(above::minced),
        offal.or(above::offal));
  }

  /** Whether it has bone in it; false if the cut tables do not say. */
  public boolean isOnBone() {
    return bone.orElse(false);
  }

  /** Whether it has vertebrae in it; false if the cut tables do not say. */
  public boolean hasVertebra() {
    return vertebra.orElse(false);
  }

  /** Whether it is made of minced meat; false if the cut tables do not say. */
  public boolean isMinced() {
    return minced.orElse(false);
  }

  /** The line of the customer's page that lists it; {@code OTHER} if the tables do not say. */
  public Offal offalLine() {
    return offal.orElse(Offal.OTHER);
  }

  /** The lines of the customer's page that list offal. */
  public enum Offal {
    LIVER,
    HIDE,
    /** The hide of small animals. */
    SKIN,
    /** Head and feet. */
    HEAD,
    OTHER
  }
}
