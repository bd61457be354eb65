package gambrel.explain;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.cuts.Kind;
import gambrel.measure.Exact;
import gambrel.measure.Share;
import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.shop.Scale;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Explains what came of a body, and what is missing. */
final class OutputsExplanation {
  private final BodyBalance balance;
  private final Lines lines;

  OutputsExplanation(BodyBalance balance, Lines lines) {
    this.balance = balance;
    this.lines = lines;
  }

  void add() {
    lines.heading("What came of it");
    takeHome();
    leftovers();
    losses();
    percent("take_home_of_hot_pct", balance.shares().takeHomeOfHot(), "take_home / hot");
    percent("take_home_of_cold_pct", balance.shares().takeHomeOfCold(), "take_home / cold");
    percent("meat_of_cold_pct", balance.shares().meatOfCold(), "meat_home / cold");
  }

  private void takeHome() {
    var weighings = balance.weighings();
    var packs = weighings.of(Step.PACK);
    if (balance.body().outcome() == Outcome.CUT) {
      weight("take_home", Outputs::takeHome, "packs without batch and its parts of batches");
      lines.weighings(packs.stream().filter(Predicate.not(weighings::isOffal)).toList());
    } else if (balance.body().outcome() == Outcome.WHOLE) {
      weight("take_home", Outputs::takeHome, "left as it hung: boning");
    } else {
      weight("take_home", Outputs::takeHome, "condemned: nothing");
    }
    perhaps("meat_home", Outputs::meatHome, "the same of kinds meat and trim");
    lines.weighings(packs.stream().filter(weighings::isMeat).toList());
    weight("offal", Outputs::offal, "packs of offal");
    lines.weighings(packs.stream().filter(weighings::isOffal).toList());
  }

  private void leftovers() {
    var weighings = balance.weighings();
    weight("tub", Outputs::tub, "tubs that went into batches");
    lines.weighings(weighings.of(Step.TUB).stream().filter(Weighing::inBatch).toList());
    perhaps("bone", Outputs::bone, "bins of kind bone");
    lines.weighings(bins(kind -> kind == Kind.BONE));
    perhaps("fat", Outputs::fat, "bins of kind fat");
    lines.weighings(bins(kind -> kind == Kind.FAT));
    perhaps("waste", Outputs::waste, "all other bins");
    lines.weighings(bins(kind -> kind != Kind.BONE && kind != Kind.FAT));
    weight("rail_trim", Outputs::railTrim, "taken off while it hung, contained in the above");
    lines.weighings(balance.trim().all());
  }

  private List<Weighing> bins(Predicate<Kind> kinds) {
    var weighings = balance.weighings();
    return weighings.of(Step.BIN).stream().filter(w -> kinds.test(weighings.kind(w))).toList();
  }

  private void losses() {
    perhaps(
        "cutting_loss",
        Outputs::cuttingLoss,
        "boning - packs - tubs - bins, without offal and rail trim");
    perhaps("unweighed", Outputs::unweighed, "boning - packs - tubs: no bins weighed");
    root("balance_u", Outputs::resolutionSquared, "2 * root of the sum of d^2/12, over:");
    if (balance.outputs().flatMap(Outputs::resolutionSquared).isPresent()) {
      divisions();
    }
    root(
        "balance_scale",
        Outputs::permittedSquared,
        "permitted errors of these scales (OIML R 76 in service)");
    perhaps("batch_loss", Outputs::batchLoss, "tubs - its parts of batches");
  }

  /** The scales of the balance's equation and how often each was used. */
  private void divisions() {
    var equation = new ArrayList<>(balance.boningWeighings());
    equation.addAll(balance.outOfBoning());
    Map<String, Scale> scales = new TreeMap<>();
    equation.forEach(w -> scales.put(w.scale().id(), w.scale()));
    scales.forEach(
        (id, scale) -> {
          long times = equation.stream().filter(w -> w.scale().id().equals(id)).count();
          String division = ", d " + scale.division() + "  scales.csv";
          lines.text("  scale " + id + ": " + times + " weighings" + division);
        });
  }

  private void weight(String name, Function<Outputs, Weight> figure, String formula) {
    lines.weight(name, balance.outputs().map(figure), formula);
  }

  private void perhaps(String name, Function<Outputs, Optional<Weight>> figure, String formula) {
    lines.weight(name, balance.outputs().flatMap(figure), formula);
  }

  private void root(
      String name, Function<Outputs, Optional<BigFraction>> square, String formula) {
    lines.figure(
        name, balance.outputs().flatMap(square).map(s -> Exact.sqrt(s, 3)), formula);
  }

  private void percent(String name, Optional<Share> share, String formula) {
    lines.figure(name, share.map(s -> Exact.round(s.percent(), 3)), formula);
  }
}
