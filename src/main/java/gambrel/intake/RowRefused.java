package gambrel.intake;

import gambrel.notice.Notice;

/** A row that is left out; never leaves this package. */
final class RowRefused extends RuntimeException {
  private final transient Notice notice;

  RowRefused(Notice notice) {
    super(notice.saying().key(), null, false, false);
    this.notice = notice;
  }

  Notice notice() {
    return notice;
  }
}
