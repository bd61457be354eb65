package gambrel.intake;

import gambrel.notice.NoticeCode;

/** A cell that cannot be read; never leaves this package. */
final class BadCell extends RuntimeException {
  private final NoticeCode code;

  /**
   * Says what is wrong.
   *
   * @param why the end of a sentence that starts with the column and what stands in it
   */
  BadCell(NoticeCode code, String why) {
    super(why, null, false, false);
    this.code = code;
  }

  /** A cell that is simply wrong. */
  BadCell(String why) {
    this(NoticeCode.SHOP_ROW_BAD, why);
  }

  NoticeCode code() {
    return code;
  }

  /**
   * The text that is handed on instead of a cell that an export's layout cannot read: no later
   * stage can take it for a value, so that the row is set aside and a correction of the cell
   * settles it.
   *
   * @param text as it stands in the export
   * @param why in a few words
   */
  static String unreadable(String text, String why) {
    return text + " (" + why + ")";
  }
}
