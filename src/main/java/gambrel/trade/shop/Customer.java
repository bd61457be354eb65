package gambrel.trade.shop;

/**
 * Somebody who owns bodies, or the shop itself.
 *
 * @param id the key that other files use
 * @param name as a letter would address them
 * @param address lines separated by {@code ;} or newlines, or empty
 * @param email or empty
 * @param language BCP 47 tag, or empty for the shop's
 */
public record Customer(String id, String name, String address, String email, String language) {
  /** The reserved id of the shop as an owner. */
  public static final String SHOP = "shop";
}
