package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/**
 * Last night on a page, ready for the template. Empty parts are not shown.
 *
 * @param page what every page carries
 * @param words labels by key, see {@link Words#labels()}
 * @param shop the shop
 * @param heading the day
 * @param story the night in a few sentences; if nothing has to be done, that all is well
 * @param held the bodies that are held
 * @param heldMore how many held bodies have no row, and where they are listed; empty if none
 * @param todo each thing to do, worst first
 * @param issued statements issued in the night
 * @param issuedMore how many issued statements have no row, and where they are listed; empty if
 *     none
 * @param files what was read
 * @param fileTotal sums of {@code files}
 * @param notes such as open bodies, or that the register is new
 */
public record MorningView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    List<String> story,
    List<Held> held,
    String heldMore,
    List<Todo> todo,
    List<Issued> issued,
    String issuedMore,
    List<FileRow> files,
    FileRow fileTotal,
    List<String> notes) {
  /**
   * A thing to do.
   *
   * @param severity its severity in a word
   * @param place file and line, or empty
   * @param ticket scale and ticket, or empty
   * @param message what is wrong
   * @param advice what to do
   * @param raw the row as it was read, or empty
   */
  public record Todo(
      String severity, String place, String ticket, String message, String advice, String raw) {}

  /**
   * A statement issued in the night.
   *
   * @param customer the customer
   * @param body the id of the body
   * @param revision in words, or empty for the first
   * @param takeHome weight with its unit
   * @param due with its currency, or empty
   */
  public record Issued(
      String customer, String body, String revision, String takeHome, String due) {}

  /**
   * A file and its rows.
   *
   * @param file relative to the shop folder
   * @param read rows read
   * @param used of them
   * @param repeat of them
   * @param voided of them
   * @param setAside of them
   */
  public record FileRow(
      String file, String read, String used, String repeat, String voided, String setAside) {}
}
