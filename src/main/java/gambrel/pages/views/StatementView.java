package gambrel.pages.views;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A customer's take-home statement, ready for the template. Empty parts are not shown.
 *
 * @param page what every page carries
 * @param words labels by key, see {@link Words#labels()}
 * @param shop the shop
 * @param kind what the document is, such as a tax invoice
 * @param issue when it was issued, which revision it is, and its number; one a line
 * @param customer the customer
 * @param address the customer's address on an invoice, or empty
 * @param heading the animal, such as {@code Beef, steer}
 * @param animal mark, kill date and number of the animal
 * @param note the shop's own note on the animal, or empty
 * @param draft why it is not final; empty if it is
 * @param changes what it changes in the statement issued before
 * @param answers in the order in which customers ask
 * @param flow the weight from the live animal to the box
 * @param boxes cut by cut
 * @param pending what the customer still gets, and when
 * @param charges what is charged; a customer with packs given outright has none
 * @param keeping how to keep and cook it
 * @param cautions short sentences
 */
public record StatementView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String kind,
    List<String> issue,
    String customer,
    String address,
    String heading,
    List<Fact> animal,
    String note,
    Optional<Draft> draft,
    Optional<TextTable> changes,
    List<Answer> answers,
    Optional<FlowView> flow,
    Optional<CutsView> boxes,
    List<Fact> pending,
    Optional<ChargesView> charges,
    Optional<TextTable> keeping,
    List<String> cautions) {
  /**
   * A statement that is not final.
   *
   * @param sentence that the shop is checking it
   * @param reasons a sentence for each reason
   */
  public record Draft(String sentence, List<String> reasons) {}
}
