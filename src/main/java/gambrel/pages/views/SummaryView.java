package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/**
 * The owner's month, ready for the template. Empty parts are not shown.
 *
 * @param page what every page carries
 * @param words labels by key, see {@link Words#labels()}
 * @param shop the shop
 * @param heading the month
 * @param known the time of the last weighing, in a sentence
 * @param first findings, and five figures beside last year's
 * @param story the month in a few sentences
 * @param held the bodies that are held
 * @param parts the chapters, part by part
 */
public record SummaryView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    String known,
    FirstPage first,
    List<String> story,
    List<Held> held,
    List<PartView> parts) {}
