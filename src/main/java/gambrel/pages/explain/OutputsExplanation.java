package gambrel.pages.explain;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
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
import java.util.Collection;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Explains what came of a body, and what is missing. */
final class OutputsExplanation {
  private final BodyAccount account;
  private final BodyBalance balance;
  private final BodyWeighings weighings;
  private final Settings settings;
  private final Lines lines;

  OutputsExplanation(BodyAccount account, Settings settings, Lines lines) {
    this.account = account;
    this.balance = account.balance();
    this.weighings = balance.weighings();
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
    var outcome = balance.body().outcome();
    var formula =
        switch (outcome) {
          case CUT -> "packs without batch and its parts of batches";
          case WHOLE -> "left as it hung: boning";
          default -> "condemned: nothing";
        };
    lines.weight("take_home", output(Outputs::takeHome), formula);
    if (outcome == Outcome.CUT) {
      lines.weighings(packs(w -> !weighings.isOffal(w)));
    }
    lines.weight("meat_home", perhaps(Outputs::meatHome), "the same of kinds meat and trim");
    lines.weighings(packs(weighings::isMeat));
    lines.weight("offal", output(Outputs::offal), "packs of offal");
    lines.weighings(packs(weighings::isOffal));
  }

  private Stream<Weighing> packs(Predicate<Weighing> which) {
    return weighings.of(Step.PACK).stream().filter(which);
  }

  private void leftovers() {
    lines.weight("tub", output(Outputs::tub), "tubs that went into batches");
    lines.weighings(weighings.of(Step.TUB).stream().filter(Weighing::inBatch));
    lines.weight("bone", perhaps(Outputs::bone), "bins of kind bone");
    lines.weighings(bins(Kind.BONE));
    lines.weight("fat", perhaps(Outputs::fat), "bins of kind fat");
    lines.weighings(bins(Kind.FAT));
    lines.weight("waste", perhaps(Outputs::waste), "all other bins");
    lines.weighings(bins(Kind.WASTE));
    lines.weight(
        "rail_trim",
        output(Outputs::railTrim),
        "taken off while it hung, contained in the above",
        balance.trim().all());
  }

  private Stream<Weighing> bins(Kind kind) {
    return weighings.of(Step.BIN).stream().filter(w -> weighings.binKind(w) == kind);
  }

  private void losses() {
    lines.weight(
        "cutting_loss",
        perhaps(Outputs::cuttingLoss),
        "boning - packs - tubs - bins, without offal and rail trim");
    lines.weight(
        "unweighed", perhaps(Outputs::unweighed), "boning - packs - tubs: no bins weighed");
    var resolution = perhaps(Outputs::resolutionSquared);
    lines.root("balance_u", resolution, "2 * root of the sum of d^2/12, over:");
    if (resolution.isPresent()) {
      divisions();
    }
    lines.root(
        "balance_scale",
        perhaps(Outputs::permittedSquared),
        "permitted errors of these scales (OIML R 76 in service)");
    if (waitsForLoss()) {
      limit();
    }
    lines.weight("batch_loss", perhaps(Outputs::batchLoss), "tubs - its parts of batches");
  }

  private boolean waitsForLoss() {
    return account.decision().reasons().stream()
        .map(Reason::code)
        .anyMatch(code -> code == ReasonCode.LOSS_HIGH || code == ReasonCode.LOSS_NEGATIVE);
  }

  /** The limit of the cutting loss and the uncertainty that it may exceed the limit by. */
  private void limit() {
    lines.weight(
        "loss_limit",
        Optional.of(Weight.of(LossLimit.of(settings, balance))),
        "limit.cutting_loss_pct of boning; limit.hanging_pct_per_day for days without a weighing");
    lines.root(
        "loss_u",
        output(Outputs::uncertaintySquared),
        "root of balance_u^2 + balance_scale^2: the loss waits beyond the limit by more than this");
  }

  /** The scales of the balance's equation and how often each was used. */
  private void divisions() {
    Stream.of(balance.boningWeighings(), balance.outOfBoning())
        .flatMap(Collection::stream)
        .map(Weighing::scale)
        .collect(Collectors.groupingBy(Scale::id, TreeMap::new, Collectors.toList()))
        .forEach(
            (id, uses) ->
                lines.text(
                    "  scale %s: %s weighings, d %s  scales.csv"
                        .formatted(id, uses.size(), uses.get(0).division())));
  }

  private <T> Optional<T> output(Function<Outputs, T> figure) {
    return balance.outputs().map(figure);
  }

  private <T> Optional<T> perhaps(Function<Outputs, Optional<T>> figure) {
    return balance.outputs().flatMap(figure);
  }
}
