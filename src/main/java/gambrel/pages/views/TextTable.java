package gambrel.pages.views;

import java.util.List;

/**
 * A table whose cells are text, with a text above and one below it.
 *
 * @param lead the text above it; may be empty
 * @param heads the head of each column; the first may be empty
 * @param rows the rows, each with a cell for each column; the first cell names the row
 * @param note the text below it; may be empty
 */
public record TextTable(String lead, List<String> heads, List<List<String>> rows, String note) {}
