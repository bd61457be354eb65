package gambrel.trade.reckoning;

import gambrel.trade.account.Billing;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.cuts.Region;
import gambrel.trade.decision.Judge;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Release;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Collects the notices about one night's figures. */
final class FigureNotices {
  private final Reckoning reckoning;
  private final List<Notice> notices = new ArrayList<>();

  FigureNotices(Reckoning reckoning) {
    this.reckoning = reckoning;
    reckoning.batches().values().forEach(this::about);
    reckoning.tests().failed().forEach(this::failed);
    reckoning.shop().bodies().values().forEach(this::weighedBeforeKill);
  }

  /** One notice for a body that was weighed on a day before its kill. */
  private void weighedBeforeKill(Body body) {
    if (body.killed().isEmpty()) {
      return;
    }
    var killed = body.killed().get();
    var early =
        reckoning.ledger().weighings().of(body.id()).stream()
            .filter(weighing -> weighing.date().isBefore(killed))
            .toList();
    if (!early.isEmpty()) {
      var first = early.get(0);
      notices.add(
          Notice.of(NoticeCode.WEIGHED_BEFORE_KILL, first.place())
              .aboutTicket(first.scale().id(), first.ticket())
              .aboutBody(body.id())
              .with("found", first.time().toLocalDateTime())
              .with("killed", killed)
              .with("count", early.size()));
    }
  }

  List<Notice> all() {
    return notices;
  }

  private static Notice about(NoticeCode code, Body body) {
    return Notice.of(code).aboutBody(body.id());
  }

  void unused(Release release) {
    boolean close = release.action() == Release.Action.CLOSE;
    notices.add(
        (close
                ? Notice.of(NoticeCode.RELEASE_UNUSED, "CLOSE", release.place())
                : Notice.of(NoticeCode.RELEASE_UNUSED, release.place()))
            .aboutBody(release.body())
            .with("on", release.on().toLocalDateTime()));
  }

  void about(BodyAccount account) {
    var body = account.body();
    var balance = account.balance();
    var unit = reckoning.shop().settings().unit();
    if (account.decision().state() == State.HELD) {
      notices.add(held(account));
    }
    if (!body.sharesAddUp()) {
      notices.add(about(NoticeCode.SHARES_SUM, body).withAll(Judge.shares(body).saying()));
    }
    if (balance.fromBlock()) {
      notices.add(about(NoticeCode.WEIGHED_ON_BLOCK, body));
    }
    for (var weighing : balance.rail().beyond()) {
      notices.add(
          Notice.of(NoticeCode.RAIL_TWICE, weighing.place())
              .aboutTicket(weighing.scale().id(), weighing.ticket())
              .aboutBody(body.id())
              .withAll(Judge.railTwice(balance, weighing).saying()));
    }
    var tubs = new Billing(reckoning.shop()).notCharged(balance);
    if (!tubs.isEmpty()) {
      var first = tubs.get(0);
      notices.add(
          Notice.of(NoticeCode.TUB_WITHOUT_BATCH, first.place())
              .aboutTicket(first.scale().id(), first.ticket())
              .aboutBody(body.id())
              .with("found", Weighing.total(tubs), unit)
              .with("count", tubs.size()));
    }
    int limit = reckoning.shop().settings().limits().daysHung();
    balance
        .daysHung()
        .filter(days -> days > limit)
        .map(days -> about(NoticeCode.HUNG_LONG, body).with("found", days).with("limit", limit))
        .ifPresent(notices::add);
    var cuts = balance.weighings().packedWithVertebra();
    boolean forbidden = reckoning.shop().settings().region() != Region.AU;
    if (forbidden && body.mayHoldRiskMaterial() && !cuts.isEmpty()) {
      notices.add(about(NoticeCode.VERTEBRA_PACKED, body).with("cuts", cuts));
    }
    if (balance.isColdAboveHot()) {
      notices.add(
          about(NoticeCode.COLD_ABOVE_HOT, body)
              .with("cold", balance.cold().orElseThrow(), unit)
              .with("hot", balance.hot().orElseThrow(), unit));
    }
  }

  /** The notice of a body that is held. */
  static Notice held(BodyAccount account) {
    var reasons = account.decision().reasons();
    var held =
        about(NoticeCode.HELD, account.body())
            .with("why", new Value.Phrases(reasons.stream().map(Reason::saying).toList(), "; "));
    boolean releasable = reasons.stream().allMatch(r -> r.code().isReleasable());
    return releasable ? held : held.advising("SETTLE");
  }

  private void failed(Weighing test) {
    var notice =
        reckoning.tests().isLimitPublished(test)
            ? Notice.of(NoticeCode.SCALE_FAILED, test.place())
            : Notice.of(NoticeCode.SCALE_FAILED, "NO_SOURCE", test.place());
    notices.add(
        notice
            .aboutTicket(test.scale().id(), test.ticket())
            .withAll(reckoning.tests().reason(test).saying()));
  }

  private void about(BatchBalance batch) {
    String id = batch.batch().id();
    if (!batch.batch().listed()) {
      notices.add(aboutBatch(NoticeCode.BATCH_UNLISTED, id));
    }
    if (batch.isOut()) {
      var reason = Judge.batchOut(batch, reckoning.shop().settings().unit());
      notices.add(Notice.of(NoticeCode.BATCH_OUT).withAll(reason.saying()));
    }
    if (batch.late()) {
      notices.add(late(batch));
    }
    if (!reckoning.shop().settings().allowMixedBatches() && owners(batch).size() > 1) {
      var bodies = List.copyOf(batch.meatInByBody().keySet());
      notices.add(aboutBatch(NoticeCode.BATCH_MIXED, id).with("bodies", bodies));
    }
  }

  private static Notice aboutBatch(NoticeCode code, String batch) {
    return Notice.of(code).with("batch", batch);
  }

  private static Notice late(BatchBalance batch) {
    var rows = batch.weighings();
    var due = batch.batch().due();
    return due.isPresent()
        ? aboutBatch(NoticeCode.BATCH_LATE, batch.batch().id()).with("due", due.get())
        : Notice.of(NoticeCode.BATCH_LATE, "NO_DUE")
            .with("batch", batch.batch().id())
            .with("last", rows.get(rows.size() - 1).date());
  }

  /** The different sets of owners of the bodies that went into a batch. */
  private Set<Set<String>> owners(BatchBalance batch) {
    return batch.meatInByBody().keySet().stream()
        .map(id -> reckoning.shop().bodies().get(id))
        .map(body -> body == null ? Set.of(Customer.SHOP) : body.owners().keySet())
        .collect(Collectors.toSet());
  }
}
