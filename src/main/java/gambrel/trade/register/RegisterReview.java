package gambrel.trade.register;

import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Looks whether what was issued before still stands on something. */
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
                notices.add(
                    Notice.of(NoticeCode.CLOCK_BACK, Place.NONE)
                        .with("last", last)
                        .with("now", now)));
  }

  /** One notice for all: what is behind it is most likely one file. */
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
              ? Notice.of(NoticeCode.WEIGHINGS_GONE, "MANY", Place.NONE)
                  .with("bodies", some)
                  .with("more", gone.size() - MOST_NAMED)
              : Notice.of(NoticeCode.WEIGHINGS_GONE, Place.NONE).with("bodies", some));
    }
  }

  /** An open batch takes its part away for a while; nothing is gone then. */
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

  /** A statement whose customer gets nothing of the body any more is replaced by no other. */
  private void findOrphans() {
    for (var row : register.latest()) {
      var account = night.bodies().get(row.body());
      boolean stands =
          account != null
              && account.decision().state() != State.CANCELLED
              && account.customers().contains(row.customer());
      if (!stands) {
        notices.add(
            Notice.of(NoticeCode.STATEMENT_ORPHANED, Place.NONE)
                .aboutBody(row.body())
                .with("customer", row.customer())
                .with("statement", row.file()));
      }
    }
  }
}
