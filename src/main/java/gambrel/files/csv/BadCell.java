package gambrel.files.csv;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;

/** A cell that cannot be read; never leaves this package. */
public final class BadCell extends RuntimeException {
  private final NoticeCode code;
  private final transient Phrase why;

  /**
   * Says what is wrong.
   *
   * @param why the end of a sentence that starts with the column and what stands in it
   */
  public BadCell(NoticeCode code, Phrase why) {
    super(why.key(), null, false, false);
    this.code = code;
    this.why = why;
  }

  /** A cell that is simply wrong. */
  public BadCell(Phrase why) {
    this(NoticeCode.SHOP_ROW_BAD, why);
  }

  /** A cell that is simply wrong, for a reason of the words files without values. */
  public BadCell(String why) {
    this(Phrase.of("CELL." + why));
  }

  public NoticeCode code() {
    return code;
  }

  public Phrase why() {
    return why;
  }

  /**
   * The text that is handed on instead of a cell that an export's layout cannot read: no later
   * stage can take it for a value, so that the row is set aside and a correction of the cell
   * settles it.
   *
   * @param text as it stands in the export
   * @param why in a few words
   */
  public static String unreadable(String text, String why) {
    return text + " (" + why + ")";
  }

  /** The reason in English. */
  public String words() {
    return NoticeWords.ENGLISH.of(why);
  }
}
