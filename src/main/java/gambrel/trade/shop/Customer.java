package gambrel.trade.shop;

/**
 * An owner of bodies, or the shop itself.
 *
 * @param id the id that other files use
 * @param name the name as on a letter
 * @param address lines separated by {@code ;} or newlines, or empty
 * @param email the e-mail address, or empty
 * @param language BCP 47 tag, or empty for the shop's language
 */
public record Customer(String id, String name, String address, String email, String language) {
  /** The reserved id of the shop as an owner. */
  public static final String SHOP = "shop";
}
