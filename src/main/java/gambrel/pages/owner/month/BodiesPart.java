package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.MonthBody;
import gambrel.pages.views.PartView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A row for every body of the month, and for every batch whose last row is of the month. A figure
 * that belongs to another month is left out, so that a column adds up to the month.
 */
record BodiesPart(MonthPage page) {
  /** If there are more bodies, only those that are open or held are listed. */
  private static final int MOST_BODIES = 60;

  PartView bodies() {
    var formats = page.formats();
    var weights = page.weights();
    var table =
        new TableBuilder<MonthBody>("bodies figures even tight")
            .first(page.say("body"), MonthBody::id)
            .words(page.say("owner"), body -> page.names().owners(body.body()))
            .words(page.say("kind"), body -> page.names().kind(body.body()))
            .head("kind")
            .words(page.say("killed"), body -> body.body().killed().map(formats::brief).orElse(""))
            .head("day");
    weight(table, "hot", body -> weights.hung(hung(body).flatMap(BodyBalance::hot)));
    weight(table, "cold", body -> weights.hung(hung(body).flatMap(BodyBalance::cold)));
    weight(table, "boning", body -> cut(body).map(weights::boning).orElse(""));
    weight(table, "home", body -> weights.cut(outputs(body).map(Outputs::takeHome)));
    weight(table, "bench_loss", body -> weights.cut(outputs(body).flatMap(Outputs::cuttingLoss)));
    percent(table, "chill_percent", body -> hung(body).flatMap(b -> b.shares().chillShrink()));
    percent(table, "bench_percent", body -> cut(body).flatMap(b -> b.shares().cuttingLoss()));
    percent(table, "home_percent", body -> cut(body).flatMap(b -> b.shares().takeHomeOfCold()));
    table.column(
        page.say("state"), "state", body -> page.say("summary.state." + body.state().id()));
    var all = page.month().bodies();
    var listed =
        all.size() <= MOST_BODIES
            ? all
            : all.stream()
                .filter(body -> body.state() == State.OPEN || body.state() == State.HELD)
                .toList();
    listed.forEach(body -> table.row(body.state() == State.HELD ? "waits" : "", body));
    int more = all.size() - listed.size();
    var remarks = new ArrayList<String>();
    if (more > 0) {
      remarks.add(page.wording().counted("bodies.more", more));
    }
    if (!listed.isEmpty()) {
      remarks.add(page.say("bodies_explained"));
    }
    var tables = table.kept("", 1, remarks);
    return PartView.withRoom(page.say("bodies"), tables, tables.isEmpty() ? remarks : List.of());
  }

  private void weight(
      TableBuilder<MonthBody> table, String head, Function<MonthBody, String> text) {
    table.number(page.label(head, page.unit()), text).head("weight");
  }

  private void percent(
      TableBuilder<MonthBody> table, String head, Function<MonthBody, Optional<Share>> share) {
    table
        .number(page.say(head), body -> page.tenths(share.apply(body).map(Share::percent)))
        .head("percent");
  }

  /** The body's figures if it was killed in the month. */
  private Optional<BodyBalance> hung(MonthBody body) {
    return Optional.of(body.balance()).filter(balance -> page.month().isKilled(body));
  }

  /** The body's figures if its take-home is of the month. */
  private Optional<BodyBalance> cut(MonthBody body) {
    return Optional.of(body.balance()).filter(balance -> page.month().isTakenHome(body));
  }

  private Optional<Outputs> outputs(MonthBody body) {
    return cut(body).flatMap(BodyBalance::outputs);
  }

  PartView batches() {
    var table =
        new TableBuilder<BatchBalance>("batches figures")
            .first(page.say("batch"), batch -> batch.batch().id())
            .words(page.say("product"), batch -> batch.batch().product())
            .number(page.label("meat_in", page.unit()), batch -> weight(batch, batch.meatIn()))
            .number(page.label("added", page.unit()), batch -> weight(batch, batch.added()))
            .number(page.label("out", page.unit()), batch -> weight(batch, batch.out()))
            .number(
                page.label("loss", page.unit()),
                batch -> batch.loss().map(loss -> bareWeight(batch, loss)).orElse(""))
            .number(
                page.say("loss_percent"),
                batch -> page.tenths(batch.lossShare().map(Share::percent)))
            .words(page.say("state"), this::state)
            .rows(page.month().batches());
    return PartView.of(page.say("batches"), table.table(), List.of());
  }

  /** A weight of zero is left blank. */
  private String weight(BatchBalance batch, Weight weight) {
    return weight.isZero() ? "" : bareWeight(batch, weight);
  }

  private String bareWeight(BatchBalance batch, Weight weight) {
    int decimals = WeightDecimals.of(batch.weighings(), page.records().settings().unit());
    return page.formats().bareWeight(weight, decimals);
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
