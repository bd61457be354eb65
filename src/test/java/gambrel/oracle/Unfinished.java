package gambrel.oracle;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** {@code data/rail.csv}: the bodies that are open or held. */
final class Unfinished {
  private final World world;
  private final Ledger ledger;

  Unfinished(World world, Ledger ledger) {
    this.world = world;
    this.ledger = ledger;
  }

  List<List<String>> table() {
    var table =
        Print.table(
            world.setup, "body,customer,species,killed,days,state,reason,standing_kg,cut_kg,due");
    world.yields.values().stream()
        .filter(yield -> isUnfinished(yield) && isHere(yield.body))
        .forEach(yield -> table.add(row(yield)));
    return table;
  }

  /** An unread charge or payment does not hold a body of which nothing would go out. */
  private boolean isUnfinished(Yield yield) {
    var verdict = world.verdicts.get(yield.body.beast.id());
    boolean out = verdict.goingOut && ledger.isOut(verdict);
    return Set.of("open", "held").contains(verdict.state) && !out;
  }

  private boolean isHere(BodyFigures body) {
    var killed = body.beast.killed();
    return killed != null && !killed.isAfter(today()) || !body.rows.isEmpty();
  }

  private LocalDate today() {
    return world.setup.localDate(world.asOf);
  }

  private List<String> row(Yield yield) {
    var body = yield.body;
    var verdict = world.verdicts.get(body.beast.id());
    var killed = body.beast.killed();
    ledger.met(killed == null, "unfinished without a kill");
    ledger.met(body.boning == null && body.hot != null, "unfinished without a boning weight");
    ledger.met(!due(yield).isEmpty(), "unfinished with a batch that is due");
    ledger.met(verdict.shares().all().size() > 1, "unfinished of several owners");
    return List.of(
        Print.text(body.beast.id()),
        Print.text(String.join(";", verdict.shares().all().keySet())),
        Print.text(body.beast.species()),
        Print.whole(killed),
        killed == null ? "" : "" + ChronoUnit.DAYS.between(killed, today()),
        verdict.state,
        String.join(";", verdict.codes),
        Num.text(body.boning == null ? body.hot : body.boning),
        Num.text(BodyFigures.sum(body.products())),
        due(yield));
  }

  private String due(Yield yield) {
    return yield.batches.stream()
        .filter(batch -> batch.open && batch.due != null)
        .map(batch -> batch.due)
        .max(Comparator.naturalOrder())
        .map(LocalDate::toString)
        .orElse("");
  }
}
