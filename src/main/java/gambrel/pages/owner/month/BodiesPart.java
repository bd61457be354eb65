package gambrel.pages.owner.month;

import gambrel.insight.month.figures.MonthBody;
import gambrel.pages.views.PartView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A row for every body of the month, and for every batch whose last row is of the month. A figure
 * that belongs to another month is left out, so that a column adds up to the month.
 */
record BodiesPart(MonthPart.Page page) implements MonthPart {
  PartView bodies() {
    var formats = formats();
    var weights = weights();
    var table =
        new TableBuilder<MonthBody>("bodies figures even tight")
            .first(say("body"), MonthBody::id)
            .words(say("owner"), body -> page.names().owners(body.body()), "owner")
            .words(say("kind"), body -> page.names().kind(body.body()), "kind")
            .words(
                say("killed"), body -> body.body().killed().map(formats::brief).orElse(""), "day");
    weight(table, "hot", body -> weights.hung(hung(body).flatMap(BodyBalance::hot)));
    weight(table, "cold", body -> weights.hung(hung(body).flatMap(BodyBalance::cold)));
    weight(table, "boning", body -> weights.boning(cut(body).flatMap(BodyBalance::boning)));
    weight(table, "home", body -> weights.cut(outputs(body).map(Outputs::takeHome)));
    weight(table, "bench_loss", body -> weights.cut(outputs(body).flatMap(Outputs::cuttingLoss)));
    percent(table, "chill_percent", body -> hung(body).flatMap(b -> b.shares().chillShrink()));
    percent(table, "bench_percent", body -> cut(body).flatMap(b -> b.shares().cuttingLoss()));
    percent(table, "home_percent", body -> cut(body).flatMap(b -> b.shares().takeHomeOfCold()));
    table.column(say("state"), "state", body -> say("summary.state." + body.state().id()));
    month().bodies().forEach(body -> table.row(body.state() == State.HELD ? "waits" : "", body));
    return PartView.withRoom(say("bodies"), table.table(say("bodies_explained")), List.of());
  }

  private void weight(
      TableBuilder<MonthBody> table, String head, Function<MonthBody, String> text) {
    table.number(label(head, unit()), text, "weight");
  }

  private void percent(
      TableBuilder<MonthBody> table, String head, Function<MonthBody, Optional<Share>> share) {
    table.number(say(head), body -> tenths(share.apply(body).map(Share::percent)), "percent");
  }

  /** The body's figures if it was killed in the month. */
  private Optional<BodyBalance> hung(MonthBody body) {
    return Optional.of(body.balance()).filter(balance -> month().isKilled(body));
  }

  /** The body's figures if its take-home is of the month. */
  private Optional<BodyBalance> cut(MonthBody body) {
    return Optional.of(body.balance()).filter(balance -> month().isTakenHome(body));
  }

  private Optional<Outputs> outputs(MonthBody body) {
    return cut(body).flatMap(BodyBalance::outputs);
  }

  PartView batches() {
    var table =
        new TableBuilder<BatchBalance>("batches figures short")
            .first(say("batch"), batch -> batch.batch().id())
            .words(say("product"), batch -> batch.batch().product())
            .number(label("meat_in", unit()), batch -> weight(batch, batch.meatIn()))
            .number(label("added", unit()), batch -> weight(batch, batch.added()))
            .number(label("out", unit()), batch -> weight(batch, batch.out()))
            .number(
                label("loss", unit()),
                batch -> batch.loss().map(loss -> bareWeight(batch, loss)).orElse(""))
            .number(say("loss_percent"), batch -> tenths(batch.lossShare().map(Share::percent)))
            .words(say("state"), this::state)
            .rows(month().batches());
    return PartView.of(say("batches"), table.table(), List.of());
  }

  /** A weight of zero is left blank. */
  private String weight(BatchBalance batch, Weight weight) {
    return weight.isZero() ? "" : bareWeight(batch, weight);
  }

  private String bareWeight(BatchBalance batch, Weight weight) {
    int decimals = WeightDecimals.of(batch.weighings(), records().settings().unit());
    return formats().bareWeight(weight, decimals);
  }

  private String state(BatchBalance batch) {
    if (batch.late()) {
      return say("summary.batch.late");
    }
    var due = batch.batch().due().filter(day -> batch.isOpen());
    return due.map(day -> say("summary.batch.due", formats().brief(day)))
        .orElseGet(() -> say("summary.batch." + batch.state().id()));
  }
}
