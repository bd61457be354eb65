package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;

/** The reason why a row gives no weighing; {@link RowClassifier} catches it. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Notice notice;

  /** Refuses a row; the notice needs no place. */
  Refusal(Notice notice) {
    super(notice.saying().key(), null, false, false);
    this.notice = notice;
  }

  /** Refuses a row with a notice that has one value. */
  Refusal(NoticeCode code, String name, String value) {
    this(Notice.of(code).with(name, value));
  }

  Notice notice() {
    return notice;
  }
}
