package gambrel.pages.views;

/**
 * What all pages of a document carry.
 *
 * @param language BCP 47 tag of the text, such as {@code en-AU}
 * @param letter whether the paper is US letter; else it is A4
 * @param title the document's title
 * @param head the running head from the second page on: shop and body
 * @param foot the running foot: shop and how to reach it
 */
public record PageView(String language, boolean letter, String title, String head, String foot) {}
