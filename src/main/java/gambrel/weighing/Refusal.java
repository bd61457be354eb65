package gambrel.weighing;

import gambrel.notice.NoticeCode;

/** Why a row cannot be accepted; thrown within this package only, to leave a row's checks early. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient NoticeCode code;
  private final String advice;

  Refusal(NoticeCode code, String message) {
    this(code, message, code.advice());
  }

  Refusal(NoticeCode code, String message, String advice) {
    super(message, null, false, false);
    this.code = code;
    this.advice = advice;
  }

  NoticeCode code() {
    return code;
  }

  String advice() {
    return advice;
  }
}
