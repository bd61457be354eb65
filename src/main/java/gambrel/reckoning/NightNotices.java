package gambrel.reckoning;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchState;
import gambrel.decision.Reason;
import gambrel.decision.State;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Customer;
import gambrel.shop.Release;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Gathers what a person should know of one night's figures. */
final class NightNotices {
  private final Reckoning reckoning;
  private final List<Notice> notices = new ArrayList<>();

  NightNotices(Reckoning reckoning) {
    this.reckoning = reckoning;
    reckoning.batches().values().forEach(this::about);
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
                "The release of " + release.body() + " covers nothing.")
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
      add(NoticeCode.HELD, body.id(), "Body " + body.id() + " waits: " + why + ".");
    }
    if (!body.sharesAddUp()) {
      add(NoticeCode.SHARES_SUM, body.id(), "The shares of " + body.id() + " do not add up to 1.");
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
                    "Body " + body.id() + " hung " + days + " days; the shop's limit is " + limit + "."));
    if (balance.rail().sameParts()
        && balance.cold().isPresent()
        && balance.hot().filter(hot -> balance.cold().get().compareTo(hot) > 0).isPresent()) {
      add(NoticeCode.COLD_ABOVE_HOT, body.id(), "Body " + body.id() + " is heavier cold than hot.");
    }
  }

  private static String words(Reason reason) {
    return reason.name().isEmpty()
        ? reason.code().id()
        : reason.code().id() + " (" + reason.name() + ")";
  }

  private void about(BatchBalance batch) {
    String id = batch.batch().id();
    if (!batch.batch().listed()) {
      add(NoticeCode.BATCH_UNLISTED, "", "batches.csv does not list batch " + id + ".");
    }
    if (batch.state() == BatchState.OUT) {
      add(
          NoticeCode.BATCH_OUT,
          "",
          "Batch "
              + id
              + ": meat "
              + batch.meatIn()
              + " and added "
              + batch.added()
              + " gave "
              + batch.out()
              + ".");
    }
    if (batch.late()) {
      add(NoticeCode.BATCH_LATE, "", "Batch " + id + " is still open.");
    }
    if (!reckoning.shop().settings().allowMixedBatches() && owners(batch).size() > 1) {
      add(NoticeCode.BATCH_MIXED, "", "Batch " + id + " mixes the meat of different owners.");
    }
  }

  private Set<Set<String>> owners(BatchBalance batch) {
    var owners = new HashSet<Set<String>>();
    for (String body : batch.meatInByBody().keySet()) {
      var known = reckoning.shop().bodies().get(body);
      owners.add(known == null ? Set.of(Customer.SHOP) : known.owners().keySet());
    }
    return owners;
  }

  private void failed(Weighing test) {
    notices.add(
        Notice.of(
                NoticeCode.SCALE_FAILED,
                test.place(),
                "Scale "
                    + test.scale().id()
                    + " showed "
                    + test.shown()
                    + " for a test weight of "
                    + test.code().nominal().orElseThrow()
                    + ".")
            .aboutTicket(test.scale().id(), test.ticket()));
  }
}
