package gambrel.pages.views;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A customer's take-home statement, ready to be set. Whatever is empty does not show.
 *
 * @param page what every page carries
 * @param words fixed words by key, see {@link Words#labels()}
 * @param shop who issues it
 * @param issue when it was issued, and which revision it is; one a line
 * @param customer whom it is for
 * @param heading the animal, such as {@code Beef, steer}
 * @param animal what its owner knows it by: mark, kill date, number
 * @param note the shop's own note on the animal, or empty
 * @param draft that it is not final
 * @param changes what it changes
 * @param answers in the order in which customers ask
 * @param flow where each kilo went
 * @param shares how the body was divided
 * @param boxes cut by cut
 * @param pending what is still to come, and when
 * @param charges what is charged; a customer with packs given outright has none
 * @param keeping how to keep and cook it
 * @param cautions short sentences for the end
 */
public record StatementView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    List<String> issue,
    String customer,
    String heading,
    List<Fact> animal,
    String note,
    Optional<DraftView> draft,
    Optional<TextTable> changes,
    List<Answer> answers,
    Optional<FlowView> flow,
    Optional<TextTable> shares,
    Optional<CutsView> boxes,
    List<Fact> pending,
    Optional<ChargesView> charges,
    Optional<TextTable> keeping,
    List<String> cautions) {
  /** Copies the collections. */
  public StatementView {
    words = Map.copyOf(words);
    issue = List.copyOf(issue);
    animal = List.copyOf(animal);
    answers = List.copyOf(answers);
    pending = List.copyOf(pending);
    cautions = List.copyOf(cautions);
  }
}
