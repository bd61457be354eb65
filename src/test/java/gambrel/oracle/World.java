package gambrel.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Everything computed from one folder at one moment. */
final class World {
  final Setup setup;
  final Instant asOf;
  final Exports exports;
  final ScaleTests tests;
  final SortedMap<String, BatchFigures> batches = new TreeMap<>(Split.byBytes());

  /** Figures of every body that is not cancelled. */
  final SortedMap<String, Yield> yields = new TreeMap<>(Split.byBytes());

  final Map<String, Verdict> verdicts = new LinkedHashMap<>();

  private final Map<Instant, World> others;

  World(Setup setup, Instant asOf) {
    this(setup, asOf, new HashMap<>());
  }

  private World(Setup setup, Instant asOf, Map<Instant, World> others) {
    this.setup = setup;
    this.asOf = asOf;
    this.others = others;
    exports = new Exports(setup, asOf);
    new Marking(exports.rows);
    var reading = new Reading(setup);
    exports.rows.stream().filter(r -> !r.unfinished).forEach(reading::read);
    var standing = standing();
    tests = new ScaleTests(setup, exports.rows);
    findBatches();
    for (var beast : setup.bodies.values()) {
      if (!beast.cancelled()) {
        var figures = new BodyFigures(beast, setup, standing.get(beast.id()), rowsOf(beast));
        yields.put(beast.id(), new Yield(figures, batches, asOf));
      }
    }
    others.put(asOf, this);
    yields.forEach((id, yield) -> verdicts.put(id, new Verdict(this, yield)));
  }

  private Map<String, Standing> standing() {
    var standing = new HashMap<String, Standing>();
    for (var beast : setup.bodies.values()) {
      var tree = setup.trees.get(beast.species());
      standing.put(beast.id(), new Standing(tree, beast.head(), rowsOf(beast)));
    }
    return standing;
  }

  private List<Row> rowsOf(Beast beast) {
    return exports.rows.stream().filter(r -> r.counts() && beast.equals(r.body)).toList();
  }

  private void findBatches() {
    Map<String, List<Row>> rows = new TreeMap<>();
    for (var row : exports.rows) {
      if (row.counts() && row.hasBatch() && row.is("tub", "added", "pack")) {
        rows.computeIfAbsent(row.batch, b -> new ArrayList<>()).add(row);
      }
    }
    rows.forEach((id, of) -> batches.put(id, new BatchFigures(id, of, setup, asOf)));
  }

  /** The same folder at another moment. */
  World at(Instant moment) {
    var known = others.get(moment);
    return known != null ? known : new World(setup, moment, others);
  }

  /** Rows set aside that name the body, or a batch of it, and are not dated later. */
  List<Row> setAside(Yield yield) {
    return exports.rows.stream()
        .filter(r -> r.mark == Row.Mark.SET_ASIDE && !r.later && !r.unfinished)
        .filter(
            r ->
                r.named.contains(yield.body.beast)
                    || yield.batches.stream().anyMatch(b -> b.id.equals(r.batch)))
        .toList();
  }
}
