package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;

/** Why a row cannot be accepted; thrown within this package only, to leave a row's checks early. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Notice notice;

  /** Refuses a row for the reason that a notice gives. */
  Refusal(Notice notice) {
    super(notice.saying().key(), null, false, false);
    this.notice = notice;
  }

  Notice notice() {
    return notice;
  }
}
