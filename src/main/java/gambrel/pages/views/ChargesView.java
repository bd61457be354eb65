package gambrel.pages.views;

import java.util.List;

/**
 * The charges and the amount due.
 *
 * @param money head of the column of amounts: the currency, and the share if there is one
 * @param whole head of the column of amounts for the whole body; empty if the body has one owner
 * @param rows the charges
 * @param sums tax, total, payments and the amount due, in that order
 * @param paying tax number, when and how to pay; may be empty
 * @param notes such as how the charges were divided; may be empty
 */
public record ChargesView(
    String money,
    String whole,
    List<Row> rows,
    List<Sum> sums,
    List<Fact> paying,
    List<String> notes) {
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
