package gambrel.pages.views;

import java.util.List;

/**
 * The shop that issues the page.
 *
 * @param name the shop's name
 * @param lines lines of address and numbers; may be empty
 * @param contact how to reach it; may be empty
 */
public record ShopView(String name, List<String> lines, List<Link> contact) {}
