package gambrel.intake;

import gambrel.notice.NoticeWords;
import gambrel.notice.Phrase;

/** A shop folder or a settings file that cannot be read; never leaves this package. */
final class UnreadableShop extends RuntimeException {
  private final transient Phrase fault;

  UnreadableShop(String why) {
    super(why, null, false, false);
    this.fault = Phrase.of("FAULT.UNREADABLE");
  }

  /** A file that cannot be read for a reason that ends the sentence. */
  UnreadableShop(String file, Phrase fault) {
    super(file + ' ' + NoticeWords.ENGLISH.of(fault), null, false, false);
    this.fault = fault;
  }

  Phrase fault() {
    return fault;
  }
}
