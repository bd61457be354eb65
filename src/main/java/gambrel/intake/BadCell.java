package gambrel.intake;

import gambrel.notice.NoticeCode;
import gambrel.notice.NoticeWords;
import gambrel.notice.Phrase;

/** A cell that cannot be read; never leaves this package. */
final class BadCell extends RuntimeException {
  private final NoticeCode code;
  private final transient Phrase why;

  /**
   * Says what is wrong.
   *
   * @param why the end of a sentence that starts with the column and what stands in it
   */
  BadCell(NoticeCode code, Phrase why) {
    super(why.key(), null, false, false);
    this.code = code;
    this.why = why;
  }

  /** A cell that is simply wrong. */
  BadCell(Phrase why) {
    this(NoticeCode.SHOP_ROW_BAD, why);
  }

  /** A cell that is simply wrong, for a reason of the words files without values. */
  BadCell(String why) {
    this(Phrase.of("CELL." + why));
  }

  NoticeCode code() {
    return code;
  }

  Phrase why() {
    return why;
  }

  /** The reason in English. */
  String words() {
    return NoticeWords.ENGLISH.of(why);
  }
}
