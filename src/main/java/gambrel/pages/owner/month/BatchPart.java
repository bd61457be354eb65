package gambrel.pages.owner.month;

import gambrel.pages.views.PartView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.util.List;

/** The batches whose last row is of the month. */
final class BatchPart {
  private final MonthPage page;

  BatchPart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var table =
        new TableBuilder("batches", "")
            .first(page.say("batch"))
            .words(page.say("product"), "")
            .number(page.label("meat_in", page.unit()))
            .number(page.label("added", page.unit()))
            .number(page.label("out", page.unit()))
            .number(page.label("loss", page.unit()))
            .number(page.say("loss_percent"))
            .words(page.say("state"), "");
    page.records().bodies().batches().forEach(batch -> row(table, batch));
    return PartView.of(page.say("batches"), table.table(), List.of());
  }

  private void row(TableBuilder table, BatchBalance batch) {
    int decimals = WeightDecimals.of(batch.weighings(), page.records().settings().unit());
    table.row(
        batch.batch().id(),
        batch.batch().product(),
        weight(batch.meatIn(), decimals),
        weight(batch.added(), decimals),
        weight(batch.out(), decimals),
        batch.loss().map(loss -> page.formats().bareWeight(loss, decimals)).orElse(""),
        page.tenths(batch.lossShare().map(Share::percent)),
        state(batch));
  }

  /** A weight of zero is left blank. */
  private String weight(Weight weight, int decimals) {
    return weight.isZero() ? "" : page.formats().bareWeight(weight, decimals);
  }

  private String state(BatchBalance batch) {
    if (batch.late()) {
      return page.say("summary.batch.late");
    }
    var due = batch.batch().due().filter(day -> batch.isOpen());
    return due.map(day -> page.say("summary.batch.due", page.formats().brief(day)))
        .orElseGet(() -> page.say("summary.batch." + batch.state().id()));
  }
}
