package gambrel.reckoning;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchState;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Customer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a person should know of the batches. */
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
      add(NoticeCode.BATCH_UNLISTED, "batches.csv does not list batch " + id + ".");
    }
    if (batch.state() == BatchState.OUT) {
      add(NoticeCode.BATCH_OUT, out(batch));
    }
    if (batch.late()) {
      add(NoticeCode.BATCH_LATE, "Batch " + id + " " + late(batch) + ".");
    }
    if (!reckoning.shop().settings().allowMixedBatches() && owners(batch).size() > 1) {
      add(
          NoticeCode.BATCH_MIXED,
          "Batch "
              + id
              + " mixes the meat of different owners: "
              + String.join(", ", batch.meatInByBody().keySet())
              + ".");
    }
  }

  private void add(NoticeCode code, String message) {
    notices.add(Notice.of(code, Place.NONE, message));
  }

  private String out(BatchBalance batch) {
    String unit = " " + reckoning.shop().settings().unit().id();
    return "Batch "
        + batch.batch().id()
        + ": "
        + batch.meatIn()
        + unit
        + " of meat and "
        + batch.added()
        + unit
        + " added gave "
        + batch.out()
        + unit
        + ".";
  }

  private static String late(BatchBalance batch) {
    var rows = batch.weighings();
    return batch
        .batch()
        .due()
        .map(due -> "was due on " + due + " and is still open")
        .orElseGet(
            () -> "is still open, and was last weighed on " + rows.get(rows.size() - 1).date());
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
