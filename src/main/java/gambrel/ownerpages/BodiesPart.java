package gambrel.ownerpages;

import gambrel.measure.Share;
import gambrel.month.MonthBodies;
import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.decision.State;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.SummaryView.BodyRow;
import gambrel.wording.Wording;
import java.util.List;
import java.util.Optional;

/**
 * Every body of the month in a line. What belongs to another month is left out, so that a column
 * adds up to the month.
 */
final class BodiesPart {
  /** More lines than this nobody reads: then only what is not settled is listed. */
  static final int MOST_BODIES = 60;

  private final MonthBodies month;
  private final Wording wording;
  private final Places places;
  private final Named named;

  BodiesPart(MonthBodies month, Wording wording, Places places) {
    this.month = month;
    this.wording = wording;
    this.places = places;
    this.named = new Named(month.night(), wording);
  }

  List<BodyRow> rows() {
    return listed().stream().map(this::row).toList();
  }

  private List<BodyAccount> listed() {
    var all = List.copyOf(month.bodies());
    return all.size() <= MOST_BODIES
        ? all
        : all.stream().filter(BodiesPart::isUnsettled).toList();
  }

  private static boolean isUnsettled(BodyAccount account) {
    var state = account.decision().state();
    return state == State.OPEN || state == State.HELD;
  }

  /** How many bodies have no line, and where they are; empty if all have. */
  String more() {
    int more = month.bodies().size() - listed().size();
    return more == 0 ? "" : wording.count("bodies.more", more, wording.formats().count(more));
  }

  private BodyRow row(BodyAccount account) {
    var body = account.body();
    var hung = Optional.of(account.balance()).filter(b -> month.isKilled(account));
    var cut = Optional.of(account.balance()).filter(b -> month.isTakenHome(account));
    var state = account.decision().state();
    return new BodyRow(
        body.id(),
        named.owners(body),
        named.kind(body),
        body.killed().map(wording.formats()::brief).orElse(""),
        places.hung(hung.flatMap(BodyBalance::hot)),
        places.hung(hung.flatMap(BodyBalance::cold)),
        places.boning(cut),
        places.cut(takeHome(cut)),
        places.cut(cut.flatMap(BodyBalance::outputs).flatMap(Outputs::cuttingLoss)),
        Percents.bare(hung.flatMap(b -> b.shares().chillShrink()).map(Share::percent), wording),
        Percents.bare(cut.flatMap(b -> b.shares().cuttingLoss()).map(Share::percent), wording),
        Percents.bare(cut.flatMap(b -> b.shares().takeHomeOfCold()).map(Share::percent), wording),
        wording.say("summary.state." + state.id()),
        state == State.HELD);
  }

  private static Optional<Weight> takeHome(Optional<BodyBalance> balance) {
    return balance.flatMap(BodyBalance::outputs).map(Outputs::takeHome);
  }
}
