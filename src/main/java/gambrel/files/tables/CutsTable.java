package gambrel.files.tables;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** {@code data/cuts.csv}: what was weighed of every item, and what came of it and all under it. */
final class CutsTable {
  private CutsTable() {}

  /**
   * The weighings of an item of a body.
   *
   * @param step their step; empty for all that came of the item
   */
  private record Row(
      BodyBalance balance, Item item, Optional<Step> step, List<Weighing> weighings) {
    Weight weight() {
      return Weighing.total(weighings);
    }

    long packs() {
      return weighings.stream().filter(weighing -> weighing.step() == Step.PACK).count();
    }

    /** Pieces of all weighings together; empty if none gives them. */
    Optional<Integer> pieces() {
      return weighings.stream()
          .filter(weighing -> weighing.pieces().isPresent())
          .map(weighing -> weighing.pieces().get())
          .reduce(Integer::sum);
    }
  }

  static Table of(Night night) {
    return new Columns<Row>(night.shop().settings().unit())
        .add("body", row -> row.balance().body().id())
        .add("item", row -> row.item().id())
        .add("parent", row -> row.item().parent())
        .add("kind", row -> row.item().kind().id())
        .add("step", row -> row.step().map(Step::id))
        .add("level", row -> row.step().isPresent() ? "own" : "total")
        .add("weight_kg", Row::weight)
        .add("packs", Row::packs)
        .add("pieces", Row::pieces)
        .add("of_boning_pct", row -> Share.of(Optional.of(row.weight()), row.balance().boning()))
        .table("cuts.csv", () -> night.bodies().values().stream().flatMap(a -> rows(a.balance())));
  }

  private static Stream<Row> rows(BodyBalance balance) {
    var own = Groups.inOrder(own(balance), Weighing::item);
    var below = below(balance.weighings());
    var rows = Stream.<Row>builder();
    for (var item : balance.weighings().tree().items()) {
      Groups.inOrder(own.getOrDefault(item.id(), List.of()).stream(), Weighing::step)
          .forEach((step, list) -> rows.add(new Row(balance, item, Optional.of(step), list)));
      if (below.containsKey(item.id())) {
        rows.add(new Row(balance, item, Optional.empty(), below.get(item.id())));
      }
    }
    return rows.build();
  }

  /** The standing weights on the rail, and all that was weighed after it, by step. */
  private static Stream<Weighing> own(BodyBalance balance) {
    var rail = balance.rail();
    return Stream.concat(
            Stream.of(rail.hot(), rail.cold(), rail.aged()).flatMap(r -> r.weighings().stream()),
            balance.weighings().all().stream().filter(w -> w.step().isCutting()))
        .sorted(Comparator.comparing(Weighing::step));
  }

  /** For each item, what came of it and of all under it. */
  private static Map<String, List<Weighing>> below(BodyWeighings weighings) {
    var tree = weighings.tree();
    var below = new HashMap<String, List<Weighing>>();
    for (var weighing : weighings.out()) {
      var item = tree.find(weighing.item());
      for (var at : item.isPresent() ? tree.path(weighing.item()) : List.<Item>of()) {
        below.computeIfAbsent(at.id(), i -> new ArrayList<>()).add(weighing);
      }
    }
    return below;
  }
}
