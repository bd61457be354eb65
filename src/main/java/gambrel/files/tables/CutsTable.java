package gambrel.files.tables;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code data/cuts.csv}: what was weighed of every item, and what came of it and all under it. */
final class CutsTable {
  private static final String COLUMNS =
      "body,item,parent,kind,step,level,weight_kg,packs,pieces,of_boning_pct";
  private static final List<Step> STEPS =
      List.of(Step.HOT, Step.COLD, Step.AGED, Step.BLOCK, Step.TUB, Step.PACK, Step.BIN);

  private CutsTable() {}

  static Table of(Night night) {
    return new Table(
        "cuts.csv",
        Table.columns(COLUMNS, night.shop().settings().unit().id()),
        () -> night.bodies().values().stream().flatMap(a -> rows(a.balance()).stream()));
  }

  private static List<List<String>> rows(BodyBalance balance) {
    var rows = new ArrayList<List<String>>();
    CutTree tree = balance.weighings().tree();
    var own = new HashMap<String, Map<Step, List<Weighing>>>();
    for (var step : STEPS) {
      for (var weighing : own(balance, step)) {
        own.computeIfAbsent(weighing.item(), i -> new EnumMap<>(Step.class))
            .computeIfAbsent(step, s -> new ArrayList<>())
            .add(weighing);
      }
    }
    var below = below(balance.weighings());
    for (var item : tree.items()) {
      own.getOrDefault(item.id(), Map.of())
          .forEach((step, list) -> rows.add(row(balance, item, step.id(), "own", list)));
      if (below.containsKey(item.id())) {
        rows.add(row(balance, item, "", "total", below.get(item.id())));
      }
    }
    return rows;
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

  private static List<Weighing> own(BodyBalance balance, Step step) {
    BodyWeighings weighings = balance.weighings();
    return switch (step) {
      case HOT -> balance.rail().hot().weighings();
      case COLD -> balance.rail().cold().weighings();
      case AGED -> balance.rail().aged().weighings();
      default -> weighings.of(step);
    };
  }

  private static List<String> row(
      BodyBalance balance, Item item, String step, String level, List<Weighing> weighings) {
    var weight = Weighing.total(weighings);
    int packs = 0;
    Optional<Integer> pieces = Optional.empty();
    for (var weighing : weighings) {
      packs += weighing.step() == Step.PACK ? 1 : 0;
      if (weighing.pieces().isPresent()) {
        pieces = Optional.of(pieces.orElse(0) + weighing.pieces().get());
      }
    }
    return new RowBuilder()
        .text(balance.body().id())
        .text(item.id())
        .text(item.parent())
        .text(item.kind().id())
        .text(step)
        .text(level)
        .weight(weight)
        .number(packs)
        .number(pieces)
        .share(Share.of(Optional.of(weight), balance.boning()))
        .cells();
  }
}
