package gambrel.intake;

/**
 * Cells that an export's layout cannot read. They are handed on as a text that no later stage can
 * take for a value by its own rules, so that the row is set aside and a correction of the cell
 * settles it.
 */
final class Unreadable {
  private Unreadable() {}

  /**
   * The text of such a cell.
   *
   * @param text as it stands in the export
   * @param why in a few words
   */
  static String cell(String text, String why) {
    return text + " (" + why + ")";
  }
}
