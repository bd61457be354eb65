package gambrel.trade.shop;

/**
 * An owner of bodies, or the shop itself.
 *
 * @param id the id that other files use
 * @param name the name as on a letter
 * @param address lines separated by {@code ;} or newlines, or empty
 * @param email the e-mail address, or empty
 * @param language BCP 47 tag, or empty for the shop's language
 * @param delivery how statements get to him
 */
public record Customer(
    String id, String name, String address, String email, String language, Delivery delivery) {
  /** How statements get to a customer. */
  public enum Delivery {
    /** By e-mail. */
    EMAIL,
    /** On paper. */
    PRINT
  }

  /** The reserved id of the shop as an owner. */
  public static final String SHOP = "shop";
}
