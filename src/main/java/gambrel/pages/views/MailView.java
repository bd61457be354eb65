package gambrel.pages.views;

import java.util.List;

/**
 * The text of a message that carries statements, ready for the template.
 *
 * @param greeting to whom
 * @param lead what is attached
 * @param statements each statement
 * @param closing what to do if something is not right
 * @param shop the shop
 */
public record MailView(
    String greeting, String lead, List<Attached> statements, String closing, ShopView shop) {
  /**
   * An attached statement.
   *
   * @param what the animal and the file
   * @param replaces which statement it replaces, or empty
   */
  public record Attached(String what, String replaces) {}
}
