package gambrel.trade.cuts;

import java.util.Optional;

/**
 * What the trade knows of an item beside its weight: columns of the cut tables. An empty fact is
 * that of the item which this one comes from; {@link CutTree#facts} fills it in.
 *
 * @param food the id of its kind of food, which says how it keeps and is cooked
 * @param bone whether it has bone in it when it is packed under its own name
 * @param vertebra whether it has vertebrae in it when it is packed under its own name; the rules on
 *     specified risk material ask for it
 * @param minced whether it is made of minced meat
 * @param offal where the customer's page lists it, if it is offal
 */
public record Facts(
    Optional<String> food,
    Optional<Boolean> bone,
    Optional<Boolean> vertebra,
    Optional<Boolean> minced,
    Optional<Offal> offal) {
  /** Every fact is that of the item above. */
  public static final Facts INHERITED =
      new Facts(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** These facts, and those of the item above where these are empty. */
  Facts over(Facts above) {
    return new Facts(
        food.or(above::food),
        bone.or(above::bone),
        vertebra.or(above::vertebra),
        minced.or(above::minced),
        offal.or(above::offal));
  }

  /** Whether it has bone in it; false where no row says it. */
  public boolean isOnBone() {
    return bone.orElse(false);
  }

  /** Whether it has vertebrae in it; false where no row says it. */
  public boolean hasVertebra() {
    return vertebra.orElse(false);
  }

  /** Whether it is made of minced meat; false where no row says it. */
  public boolean isMinced() {
    return minced.orElse(false);
  }

  /** Where the page lists it as offal. */
  public Offal offalLine() {
    return offal.orElse(Offal.OTHER);
  }

  /** The line of the customer's page that offal is listed in. */
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
