package gambrel.oracle;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;

/** Where bodies lose weight: what is lost, and of what. */
enum MonthLoss {
  CHILL("chill_loss", "hot", "cold"),
  AGEING("ageing_loss", "cold_of_aged", "aged"),
  BENCH("cutting_loss", "boning", ""),
  BATCH("batch_loss", "tub", "");

  final String lost;
  final String of;
  private final String step;

  MonthLoss(String lost, String of, String step) {
    this.lost = lost;
    this.of = of;
    this.step = step;
  }

  String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean isOnRail() {
    return this == CHILL || this == AGEING;
  }

  /** The bodies of a month of which it is known, with those that are held. */
  List<Months.Member> charted(Months months, YearMonth month) {
    var bodies = isOnRail() ? months.killed(month) : months.cut(month);
    return bodies.stream().filter(months::isCharted).filter(this::isKnown).toList();
  }

  /** The bodies of a month that count and of which it is known. */
  List<Months.Member> of(Months months, YearMonth month) {
    var bodies = isOnRail() ? months.killed(month) : months.cut(month);
    return bodies.stream()
        .filter(months::isCounted)
        .filter(this::isKnown)
        .filter(m -> this != BENCH || m.yield().daysUnweighed() <= Yield.DAYS_UNWEIGHED)
        .toList();
  }

  boolean isKnown(Months.Member member) {
    return member.number(lost) != null
        && member.number(of) != null
        && member.number(of).signum() != 0;
  }

  /** The bodies of the twelve months before of which it was known when the month ended. */
  List<Months.Member> before(Months months, YearMonth month) {
    return months.before(month, m -> of(months, m)).stream()
        .filter(m -> !isLater(m, month.atEndOfMonth()))
        .toList();
  }

  /** The same for a chart, which has also bodies that hung on unweighed. */
  List<Months.Member> chartedBefore(Months months, YearMonth month) {
    return months.before(month, m -> charted(months, m)).stream()
        .filter(months::isCounted)
        .filter(m -> !isLater(m, month.atEndOfMonth()))
        .toList();
  }

  private boolean isLater(Months.Member member, LocalDate day) {
    return member.yield().body.rows.stream().anyMatch(r -> r.is(step) && r.date.isAfter(day));
  }
}
