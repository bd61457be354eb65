package gambrel.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The state of a body and the reasons for it. */
final class Verdict {
  /** What holds a body: a code and what it names. */
  record Reason(String code, String name) {}

  private static final Set<String> FIRM = Set.of("shares", "charge-unknown", "row-unread");

  final String state;

  /** Codes for the column, each once. */
  final Set<String> codes = new LinkedHashSet<>();

  final Charges charges;

  /** Whether it would go out but for a row of charges, payments or batches. */
  boolean goingOut;

  /** Whether it gave too little and was closed for that. */
  boolean closedLow;

  /** Whether a release covers a reason. */
  boolean releasedSome;

  /** Reasons that hold before releases; none while the body is open. */
  private final List<Reason> held = new ArrayList<>();

  private final World world;
  private final Yield yield;
  private final BodyFigures body;
  private final Progress progress;
  private final Shares shares;
  private final UsualShare usual;

  Verdict(World world, Yield yield) {
    this.world = world;
    this.yield = yield;
    body = yield.body;
    progress = new Progress(body, world.asOf);
    shares = new Shares(world.setup, body.beast);
    charges = new Charges(yield, shares);
    usual = new UsualShare(world);
    var waits = waits();
    boolean open = (progress.tooEarly() || !waits.isEmpty()) && !progress.closed();
    if (open) {
      codes.addAll(waits);
      state = "open";
      return;
    }
    findReasons();
    findBatchReasons();
    findLastReasons();
    var released = released();
    releasedSome = held.stream().anyMatch(released::contains);
    held.stream().filter(r -> !released.contains(r)).forEach(r -> codes.add(r.code()));
    boolean goesOut = codes.isEmpty() && !recipients().isEmpty();
    if (goesOut && !new Unread(world).holdingWhatGoesOut(this).isEmpty()) {
      codes.add("row-unread");
      goingOut = true;
    }
    state = !codes.isEmpty() ? "held" : recipients().isEmpty() ? "closed" : "issued";
  }

  private List<String> waits() {
    var waits = new ArrayList<String>();
    if (yield.batches.stream().anyMatch(b -> b.open && !b.hasDue && !b.late)) {
      waits.add("batch-open");
    }
    if ((yield.lossHigh() || usual.isBelow(yield)) && !cuttingPast()) {
      waits.add("part-cut");
    }
    return waits;
  }

  private boolean cuttingPast() {
    return !body.lastCut().plus(world.setup.cuttingDays()).isAfter(world.asOf);
  }

  private void hold(boolean when, String code, String name) {
    if (when) {
      held.add(new Reason(code, name));
    }
  }

  private void findReasons() {
    boolean condemned = body.beast.condemned();
    boolean blocksOnly =
        body.standing.rows().isEmpty() && body.rows.stream().anyMatch(r -> r.is("block"));
    for (var step : world.setup.rail(body.beast.species())) {
      hold(!blocksOnly && !condemned && body.standing.rows(step).isEmpty(), "rail-missing", "");
    }
    hold(!condemned && body.rail.partsDiffer(), "parts-missing", "");
    hold(yield.lossNegative(), "loss-negative", "");
    hold(yield.lossHigh(), "loss-high", "");
    hold(usual.isBelow(yield) && cuttingPast(), "home-low", "");
    body.rail.surplus.forEach(row -> hold(true, "rail-twice", named(row)));
    hold(!new Unread(world).holding(this).isEmpty(), "row-unread", "");
    for (var row : world.setAside(yield)) {
      hold(true, "row-set-aside", named(row));
    }
  }

  private static String named(Row row) {
    return row.cell("scale") + " " + row.cell("ticket");
  }

  private void findBatchReasons() {
    yield.batches.forEach(b -> hold(b.state.equals("out"), "batch-out", b.id));
    yield.batches.forEach(b -> hold(b.late, "batch-late", b.id));
  }

  private void findLastReasons() {
    hold(!shares.complete(), "shares", "");
    charges.unknown.forEach(charge -> hold(true, "charge-unknown", charge));
    var weighed = new ArrayList<>(body.rows);
    yield.batches.forEach(batch -> weighed.addAll(batch.rows));
    for (var row : weighed) {
      world.tests.failed(row).forEach(test -> hold(true, "scale-failed", named(test)));
    }
  }

  private Set<Reason> released() {
    var released = new HashSet<Reason>();
    for (var line : progress.releases("release")) {
      var on = world.setup.moment(line.get("on"));
      if (on.equals(world.asOf)) {
        released.addAll(held);
      } else {
        released.addAll(world.at(on).verdicts.get(body.beast.id()).held);
      }
    }
    released.removeIf(r -> FIRM.contains(r.code()));
    var low = new Reason("home-low", "");
    if (held.contains(low) && progress.closes().stream().anyMatch(this::isClosedLow)) {
      released.add(low);
      closedLow = true;
    }
    return released;
  }

  /** Whether the body gave too little when it was closed, and was open for that. */
  private boolean isClosedLow(Instant on) {
    if (on.equals(world.asOf)) {
      return false;
    }
    var then = world.at(on);
    var before = then.yields.get(body.beast.id());
    return new UsualShare(then).isBelow(before)
        && before.body.lastCut().plus(world.setup.cuttingDays()).isAfter(on);
  }

  /** Everybody but the shop who gets a statement. */
  Set<String> recipients() {
    var all = new LinkedHashSet<>(shares.all().keySet());
    body.rows.stream()
        .filter(r -> r.isPack() && !r.customer.isEmpty())
        .filter(r -> !body.beast.uncut() || body.isOffal(r))
        .forEach(r -> all.add(r.customer));
    all.remove("shop");
    return all;
  }

  /** Everybody who owns some of it or takes some of it home, the shop too. */
  Set<String> customers() {
    var all = recipients();
    all.addAll(shares.all().keySet());
    return all;
  }

  BodyFigures body() {
    return body;
  }

  List<BatchFigures> batches() {
    return yield.batches;
  }

  Shares shares() {
    return shares;
  }
}
