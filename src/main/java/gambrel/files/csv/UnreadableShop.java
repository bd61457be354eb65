package gambrel.files.csv;

import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;

/** A shop folder or a settings file that cannot be read; never leaves this package. */
public final class UnreadableShop extends RuntimeException {
  private final transient Phrase fault;

  public UnreadableShop(String why) {
    super(why, null, false, false);
    this.fault = Phrase.of("FAULT.UNREADABLE");
  }

  /** A file that cannot be read for a reason that ends the sentence. */
  public UnreadableShop(String file, Phrase fault) {
    super(file + ' ' + NoticeWords.ENGLISH.of(fault), null, false, false);
    this.fault = fault;
  }

  public Phrase fault() {
    return fault;
  }
}
