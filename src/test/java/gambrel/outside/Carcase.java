package gambrel.outside;

import java.time.LocalDate;

/**
 * One body as its owner knows it.
 *
 * @param id of the body
 * @param species the species
 * @param category its class
 * @param style how it is cut
 * @param killed the day of kill
 * @param cut the day on which it is cut
 * @param customer its owner, or shop
 * @param supplier who sold it to the shop, or empty
 * @param chiller where it hangs
 * @param boner who bones it
 * @param bench the line on which it is packed
 */
record Carcase(
    String id,
    Species species,
    String category,
    Style style,
    LocalDate killed,
    LocalDate cut,
    String customer,
    String supplier,
    String chiller,
    String boner,
    String bench) {
  /** Whether the shop owns it. */
  boolean isOwn() {
    return customer.equals("shop");
  }
}
