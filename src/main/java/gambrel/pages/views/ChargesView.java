package gambrel.pages.views;

import java.util.List;

/**
 * The charges and the amount due.
 *
 * @param money head of the column of amounts: the currency, and the share if there is one
 * @param whole head of the column of amounts for the whole body; empty if the body has one owner
 * @param sections what the shop charges; what it buys; payments and what is left to pay
 * @param notes such as how the charges were divided; may be empty
 */
public record ChargesView(String money, String whole, List<Section> sections, List<String> notes) {
  /**
   * Lines that are summed together.
   *
   * @param title what they are; may be empty
   * @param rows charges; may be empty
   * @param sums sums under them; may be empty
   */
  public record Section(String title, List<Row> rows, List<Sum> sums) {}

  /**
   * A charge.
   *
   * @param description as the shop's price list has it
   * @param quantity with its unit
   * @param price of one unit
   * @param whole amount for the whole body, or empty
   * @param amount that this customer pays, without the currency
   */
  public record Row(
      String description, String quantity, String price, String whole, String amount) {}

  /**
   * A line under the charges.
   *
   * @param label what it is
   * @param amount without the currency
   * @param strong whether it is printed in bold
   */
  public record Sum(String label, String amount, boolean strong) {}
}
