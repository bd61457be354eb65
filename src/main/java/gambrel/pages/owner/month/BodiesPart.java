package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.pages.owner.Names;
import gambrel.pages.views.PartView;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every body of the month in a line. What belongs to another month is left out, so that a column
 * adds up to the month.
 */
final class BodiesPart {
  /**
   * Nobody reads more lines than this: of more bodies only those that are not settled are listed.
   */
  static final int MOST_BODIES = 60;

  private final MonthPage page;
  private final MonthBodies month;
  private final Names named;

  BodiesPart(MonthPage page) {
    this.page = page;
    this.month = page.records().bodies();
    this.named = new Names(month.night(), page.wording());
  }

  PartView part() {
    var table =
        new TableBuilder("bodies", "even tight")
            .first(page.say("body"))
            .words(page.say("owner"), "")
            .words(page.say("kind"), "kind")
            .words(page.say("killed"), "day");
    for (String weight : List.of("hot", "cold", "boning", "home", "bench_loss")) {
      table.number(page.label(weight, page.unit()), "weight");
    }
    for (String percent : List.of("chill_percent", "bench_percent", "home_percent")) {
      table.number(page.say(percent), "percent");
    }
    table.column(page.say("state"), "state", "state");
    var listed = listed();
    listed.forEach(body -> row(table, body));
    int more = month.bodies().size() - listed.size();
    var remarks = new ArrayList<String>();
    if (more > 0) {
      remarks.add(page.counted("bodies.more", more));
    }
    if (!listed.isEmpty()) {
      remarks.add(page.say("bodies_explained"));
    }
    var tables = table.kept("", 1, remarks);
    return PartView.withRoom(page.say("bodies"), tables, tables.isEmpty() ? remarks : List.of());
  }

  private List<MonthBody> listed() {
    return month.bodies().size() <= MOST_BODIES
        ? month.bodies()
        : month.bodies().stream().filter(BodiesPart::isUnsettled).toList();
  }

  private static boolean isUnsettled(MonthBody body) {
    return body.state() == State.OPEN || body.state() == State.HELD;
  }

  private void row(TableBuilder table, MonthBody of) {
    var body = of.body();
    var places = page.places();
    var hung = Optional.of(of.balance()).filter(b -> month.isKilled(of));
    var cut = Optional.of(of.balance()).filter(b -> month.isTakenHome(of));
    var outputs = cut.flatMap(BodyBalance::outputs);
    table.styled(
        of.state() == State.HELD ? "waits" : "",
        body.id(),
        named.owners(body),
        named.kind(body),
        body.killed().map(page.formats()::brief).orElse(""),
        places.hung(hung.flatMap(BodyBalance::hot)),
        places.hung(hung.flatMap(BodyBalance::cold)),
        places.boning(cut),
        places.cut(outputs.map(Outputs::takeHome)),
        places.cut(outputs.flatMap(Outputs::cuttingLoss)),
        percent(hung.flatMap(b -> b.shares().chillShrink())),
        percent(cut.flatMap(b -> b.shares().cuttingLoss())),
        percent(cut.flatMap(b -> b.shares().takeHomeOfCold())),
        page.say("summary.state." + of.state().id()));
  }

  private String percent(Optional<Share> share) {
    return page.tenths(share.map(Share::percent));
  }
}
