package gambrel.pages.explain;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** Explains what came of a body, and what is missing. */
final class OutputsExplanation {
  private final BodyAccount account;
  private final BodyBalance balance;
  private final Settings settings;
  private final Lines lines;

  OutputsExplanation(BodyAccount account, Settings settings, Lines lines) {
    this.account = account;
    this.balance = account.balance();
    this.settings = settings;
    this.lines = lines;
  }

  void add() {
    lines.heading("What came of it");
    takeHome();
    leftovers();
    losses();
    lines.share("take_home_of_hot_pct", balance.shares().takeHomeOfHot(), "take_home / hot");
    lines.share("take_home_of_cold_pct", balance.shares().takeHomeOfCold(), "take_home / cold");
    lines.share("meat_of_cold_pct", balance.shares().meatOfCold(), "meat_home / cold");
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
    lines.weighings(bins(Kind.BONE));
    perhaps("fat", Outputs::fat, "bins of kind fat");
    lines.weighings(bins(Kind.FAT));
    perhaps("waste", Outputs::waste, "all other bins");
    lines.weighings(bins(Kind.WASTE));
    weight("rail_trim", Outputs::railTrim, "taken off while it hung, contained in the above");
    lines.weighings(balance.trim().all());
  }

  private List<Weighing> bins(Kind kind) {
    var weighings = balance.weighings();
    return weighings.of(Step.BIN).stream().filter(w -> weighings.binKind(w) == kind).toList();
  }

  private void losses() {
    perhaps(
        "cutting_loss",
        Outputs::cuttingLoss,
        "boning - packs - tubs - bins, without offal and rail trim");
    perhaps("unweighed", Outputs::unweighed, "boning - packs - tubs: no bins weighed");
    lines.root(
        "balance_u",
        balance.outputs().flatMap(Outputs::resolutionSquared),
        "2 * root of the sum of d^2/12, over:");
    if (balance.outputs().flatMap(Outputs::resolutionSquared).isPresent()) {
      divisions();
    }
    lines.root(
        "balance_scale",
        balance.outputs().flatMap(Outputs::permittedSquared),
        "permitted errors of these scales (OIML R 76 in service)");
    if (waitsForLoss()) {
      limit();
    }
    perhaps("batch_loss", Outputs::batchLoss, "tubs - its parts of batches");
  }

  private boolean waitsForLoss() {
    return account.decision().reasons().stream()
        .map(Reason::code)
        .anyMatch(code -> code == ReasonCode.LOSS_HIGH || code == ReasonCode.LOSS_NEGATIVE);
  }

  /** What the cutting loss is held against. */
  private void limit() {
    lines.weight(
        "loss_limit",
        Optional.of(Weight.of(LossLimit.of(settings, balance))),
        "limit.cutting_loss_pct of boning; limit.hanging_pct_per_day for days without a weighing");
    lines.root(
        "loss_u",
        balance.outputs().map(Outputs::uncertaintySquared),
        "root of balance_u^2 + balance_scale^2: the loss waits beyond the limit by more than this");
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
}
