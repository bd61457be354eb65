package gambrel.pages.views;

import java.util.List;

/**
 * Who issues the page.
 *
 * @param name the shop's name
 * @param lines address and contact, one a line; may be empty
 */
public record ShopView(String name, List<String> lines) {
  /** Copies the lines. */
  public ShopView {
    lines = List.copyOf(lines);
  }
}
