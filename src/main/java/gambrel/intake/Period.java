package gambrel.intake;

import gambrel.notice.NoticeCode;
import java.time.LocalDate;
import java.util.Optional;

/** Days from one to another. */
final class Period {
  private Period() {}

  /** Refuses a row whose last day is before its first. */
  static void check(Row row, Optional<LocalDate> from, Optional<LocalDate> to) {
    if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      throw row.refuse(NoticeCode.SHOP_ROW_BAD, "TO_BEFORE_FROM");
    }
  }
}
