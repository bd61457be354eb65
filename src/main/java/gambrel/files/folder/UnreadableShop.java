package gambrel.files.folder;

import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;

/** A shop folder or a settings file that cannot be read. */
public final class UnreadableShop extends RuntimeException {
  private final transient Phrase fault;

  /** The whole reason as an English sentence. */
  UnreadableShop(String why) {
    super(why, null, false, false);
    this.fault = Phrase.of("FAULT.UNREADABLE");
  }

  /** A file that cannot be read; {@code fault} ends the sentence that begins with its name. */
  UnreadableShop(String file, Phrase fault) {
    super(file + ' ' + NoticeWords.ENGLISH.of(fault), null, false, false);
    this.fault = fault;
  }

  /** The end of a sentence that begins with the file's name. */
  public Phrase fault() {
    return fault;
  }
}
