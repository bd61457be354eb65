package gambrel.pages.views;

import java.util.List;

/**
 * The sheet before a customer's printed statements.
 *
 * @param page what every page carries
 * @param lines name and address, where an envelope has its window
 */
public record CoverView(PageView page, List<String> lines) {}
