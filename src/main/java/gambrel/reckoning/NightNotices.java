package gambrel.reckoning;

import gambrel.decision.Reason;
import gambrel.decision.State;
import gambrel.measure.Weight;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Body;
import gambrel.shop.Release;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Gathers what a person should know of one night's figures. */
final class NightNotices {
  private static final String SETTLE =
      "Settle the reasons: shares and unknown charges cannot be released.";

  private final Reckoning reckoning;
  private final List<Notice> notices = new ArrayList<>();

  NightNotices(Reckoning reckoning) {
    this.reckoning = reckoning;
    notices.addAll(BatchNotices.of(reckoning));
    reckoning.tests().failed().forEach(this::failed);
    notices.addAll(BeforeKill.of(reckoning.shop(), reckoning.ledger().weighings()));
  }

  List<Notice> all() {
    return notices;
  }

  private void add(NoticeCode code, String body, String message) {
    notices.add(Notice.of(code, Place.NONE, message).aboutBody(body));
  }

  void unused(Release release) {
    notices.add(
        Notice.of(
                NoticeCode.RELEASE_UNUSED,
                release.place(),
                "The release of "
                    + release.body()
                    + " covers nothing: at "
                    + release.on().toLocalDateTime()
                    + " nothing held it.")
            .aboutBody(release.body()));
  }

  void about(BodyAccount account) {
    var body = account.body();
    var balance = account.balance();
    var state = account.decision().state();
    if (state == State.HELD) {
      String why =
          account.decision().reasons().stream()
              .map(NightNotices::words)
              .collect(Collectors.joining("; "));
      var held =
          Notice.of(NoticeCode.HELD, Place.NONE, "Body " + body.id() + " waits: " + why + ".")
              .aboutBody(body.id());
      boolean releasable =
          account.decision().reasons().stream().allMatch(r -> r.code().isReleasable());
      notices.add(releasable ? held : held.advising(SETTLE));
    }
    if (!body.sharesAddUp()) {
      add(NoticeCode.SHARES_SUM, body.id(), "The shares of " + body.id() + " " + sum(body) + ".");
    }
    if (balance.fromBlock()) {
      add(
          NoticeCode.WEIGHED_ON_BLOCK,
          body.id(),
          "Body " + body.id() + " was never on the rail; its weight is taken from the block.");
    }
    int limit = reckoning.shop().settings().limits().daysHung();
    balance
        .daysHung()
        .filter(days -> days > limit)
        .ifPresent(
            days ->
                add(
                    NoticeCode.HUNG_LONG,
                    body.id(),
                    "Body "
                        + body.id()
                        + " hung "
                        + days
                        + " days; the shop's limit is "
                        + limit
                        + "."));
    if (balance.rail().sameParts()
        && balance.cold().isPresent()
        && balance.hot().filter(hot -> balance.cold().get().compareTo(hot) > 0).isPresent()) {
      add(
          NoticeCode.COLD_ABOVE_HOT,
          body.id(),
          "Body "
              + body.id()
              + " is heavier cold, "
              + shown(balance.cold().get())
              + ", than hot, "
              + shown(balance.hot().get())
              + ".");
    }
  }

  private String shown(Weight weight) {
    return weight + " " + reckoning.shop().settings().unit().id();
  }

  private static String sum(Body body) {
    var shares = body.owners().values();
    var sum = shares.stream().reduce(BigFraction.ZERO, BigFraction::add);
    return shares.contains(BigFraction.ZERO)
        ? "are not all known"
        : "add up to " + sum.getNumerator() + "/" + sum.getDenominator() + ", not 1";
  }

  private static String words(Reason reason) {
    return reason.name().isEmpty()
        ? reason.code().id()
        : reason.code().id() + " (" + reason.name() + ")";
  }

  private void failed(Weighing test) {
    notices.add(
        Notice.of(
                NoticeCode.SCALE_FAILED,
                test.place(),
                "Scale "
                    + test.scale().id()
                    + " showed "
                    + shown(test.net())
                    + " for a test weight of "
                    + test.code().nominal().orElseThrow()
                    + "; at most "
                    + shown(reckoning.tests().limit(test))
                    + " off passes."
                    + (reckoning.tests().isLimitPublished(test)
                        ? ""
                        : " No published source of this limit is at hand."))
            .aboutTicket(test.scale().id(), test.ticket()));
  }
}
