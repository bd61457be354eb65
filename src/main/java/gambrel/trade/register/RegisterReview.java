package gambrel.trade.register;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Compares earlier statements with the night: late dates, lost weighings, lost bodies. */
final class RegisterReview {
  private static final int MOST_NAMED = 5;

  private final Night night;
  private final Register register;
  private final LocalDateTime now;
  private final List<Notice> notices = new ArrayList<>();

  RegisterReview(Night night, Register register) {
    this.night = night;
    this.register = register;
    this.now = night.asOf().toLocalDateTime();
  }

  List<Notice> notices() {
    findClockGoneBack();
    findWeighingsGone();
    findOrphans();
    return notices;
  }

  private void findClockGoneBack() {
    register.rows().stream()
        .map(RegisterRow::issued)
        .max(Comparator.naturalOrder())
        .filter(last -> last.isAfter(now))
        .ifPresent(
            last ->
                notices.add(Notice.of(NoticeCode.CLOCK_BACK).with("last", last).with("now", now)));
  }

  /** Adds one notice for all bodies, since one missing file is the likely cause. */
  private void findWeighingsGone() {
    var gone = new TreeSet<String>();
    for (var row : register.latest()) {
      var account = night.bodies().get(row.body());
      if (account != null && !row.issued().isAfter(now) && hasLost(account, row)) {
        gone.add(row.body());
      }
    }
    if (!gone.isEmpty()) {
      var some = gone.stream().limit(MOST_NAMED).toList();
      notices.add(
          gone.size() > MOST_NAMED
              ? Notice.of(NoticeCode.WEIGHINGS_GONE, "MANY")
                  .with("bodies", some)
                  .with("more", gone.size() - MOST_NAMED)
              : Notice.of(NoticeCode.WEIGHINGS_GONE).with("bodies", some));
    }
  }

  /**
   * Whether a body is open and has less take-home than its statement. A body that is open for a
   * batch does not count: it regains its part when the batch is finished.
   */
  private static boolean hasLost(BodyAccount account, RegisterRow row) {
    var decision = account.decision();
    return decision.state() == State.OPEN
        && decision.reasons().stream().noneMatch(r -> r.code() == ReasonCode.BATCH_OPEN)
        && takeHome(account, row.customer()).compareTo(row.takeHome()) < 0;
  }

  private static Weight takeHome(BodyAccount account, String customer) {
    return Optional.ofNullable(account.entitlements().get(customer))
        .map(entitlement -> entitlement.takeHome())
        .orElse(Weight.ZERO);
  }

  /** Finds statements whose customer has no part of the body now. */
  private void findOrphans() {
    for (var row : register.latest()) {
      if (!night.isOwner(row.customer(), row.body())) {
        notices.add(
            Notice.of(NoticeCode.STATEMENT_ORPHANED)
                .aboutBody(row.body())
                .with("customer", row.customer())
                .with("statement", row.file()));
      }
    }
  }
}
