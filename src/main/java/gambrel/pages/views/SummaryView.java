package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/**
 * The owner's month, ready for the template: three pages and an appendix. Empty parts are not
 * shown.
 *
 * @param page what every page carries
 * @param words labels by key, see {@link Words#labels()}
 * @param shop the shop
 * @param heading the month
 * @param known the time of the last weighing, in a sentence
 * @param first the page of decisions
 * @param losses the page of losses, part by part
 * @param money the page of money
 * @param more the findings that have no room on the first page
 * @param appendix all else
 */
public record SummaryView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    String known,
    FirstPage first,
    List<PartView> losses,
    List<PartView> money,
    List<FirstPage.Row> more,
    List<PartView> appendix) {}
