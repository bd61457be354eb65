package gambrel.trade.reckoning;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BatchState;
import gambrel.trade.decision.Judge;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Customer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Makes the notices about batches: unlisted, out of balance, late, of several owners. */
final class BatchNotices {
  private final Reckoning reckoning;
  private final List<Notice> notices = new ArrayList<>();

  private BatchNotices(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  static List<Notice> of(Reckoning reckoning) {
    var notices = new BatchNotices(reckoning);
    reckoning.batches().values().forEach(notices::about);
    return notices.notices;
  }

  private void about(BatchBalance batch) {
    String id = batch.batch().id();
    if (!batch.batch().listed()) {
      notices.add(of(NoticeCode.BATCH_UNLISTED, id));
    }
    if (batch.state() == BatchState.OUT) {
      var reason = Judge.batchOut(batch, reckoning.shop().settings().unit());
      notices.add(Notice.of(NoticeCode.BATCH_OUT, Place.NONE).withAll(reason.saying()));
    }
    if (batch.late()) {
      notices.add(late(batch));
    }
    if (!reckoning.shop().settings().allowMixedBatches() && owners(batch).size() > 1) {
      var bodies = List.copyOf(batch.meatInByBody().keySet());
      notices.add(of(NoticeCode.BATCH_MIXED, id).with("bodies", bodies));
    }
  }

  private static Notice of(NoticeCode code, String batch) {
    return Notice.of(code, Place.NONE).with("batch", batch);
  }

  private static Notice late(BatchBalance batch) {
    var rows = batch.weighings();
    var due = batch.batch().due();
    return due.isPresent()
        ? of(NoticeCode.BATCH_LATE, batch.batch().id()).with("due", due.get())
        : Notice.of(NoticeCode.BATCH_LATE, "NO_DUE", Place.NONE)
            .with("batch", batch.batch().id())
            .with("last", rows.get(rows.size() - 1).date());
  }

  private Set<Set<String>> owners(BatchBalance batch) {
    var owners = new HashSet<Set<String>>();
    for (String body : batch.meatInByBody().keySet()) {
      var known = reckoning.shop().bodies().get(body);
      owners.add(known == null ? Set.of(Customer.SHOP) : known.owners().keySet());
    }
    return owners;
  }
}
