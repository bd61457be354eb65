package gambrel.pages.explain;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Explains what came of a body, and what is missing. */
record OutputsExplanation(BodyAccount account, Settings settings, Lines lines) {
  private BodyBalance balance() {
    return account.balance();
  }

  private BodyWeighings weighings() {
    return balance().weighings();
  }

  void add() {
    lines.heading("What came of it");
    takeHome();
    leftovers();
    losses();
    lines.figure("take_home_of_hot_pct", balance().shares().takeHomeOfHot(), "take_home / hot");
    lines.figure("take_home_of_cold_pct", balance().shares().takeHomeOfCold(), "take_home / cold");
    lines.figure("meat_of_cold_pct", balance().shares().meatOfCold(), "meat_home / cold");
  }

  private void takeHome() {
    var outcome = balance().body().outcome();
    var formula =
        switch (outcome) {
          case CUT -> "packs without batch and its parts of batches";
          case WHOLE -> "left as it hung: boning";
          default -> "condemned: nothing";
        };
    var packs = weighings().of(Step.PACK, w -> outcome == Outcome.CUT && !weighings().isOffal(w));
    lines.figure("take_home", output(Outputs::takeHome), formula, packs);
    lines.figure(
        "meat_home",
        perhaps(Outputs::meatHome),
        "the same of kinds meat and trim",
        weighings().of(Step.PACK, weighings()::isMeat));
    var offal = weighings().of(Step.PACK, weighings()::isOffal);
    lines.figure("offal", output(Outputs::offal), "packs of offal", offal);
  }

  private void leftovers() {
    var tubs = weighings().of(Step.TUB, Weighing::inBatch);
    lines.figure("tub", output(Outputs::tub), "tubs that went into batches", tubs);
    lines.figure("bone", perhaps(Outputs::bone), "bins of kind bone", bins(Kind.BONE));
    lines.figure("fat", perhaps(Outputs::fat), "bins of kind fat", bins(Kind.FAT));
    lines.figure("waste", perhaps(Outputs::waste), "all other bins", bins(Kind.WASTE));
    lines.figure(
        "rail_trim",
        output(Outputs::railTrim),
        "taken off while it hung, contained in the above",
        balance().trim().all());
  }

  private List<Weighing> bins(Kind kind) {
    return weighings().of(Step.BIN, w -> weighings().binKind(w) == kind);
  }

  private void losses() {
    lines.figure(
        "cutting_loss",
        perhaps(Outputs::cuttingLoss),
        "boning - packs - tubs - bins, without offal and rail trim");
    lines.figure(
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
    var reasons = account.decision().reasons().stream().map(reason -> reason.code());
    if (reasons.anyMatch(c -> c == ReasonCode.LOSS_HIGH || c == ReasonCode.LOSS_NEGATIVE)) {
      limit();
    }
    lines.figure("batch_loss", perhaps(Outputs::batchLoss), "tubs - its parts of batches");
  }

  /** The limit of the cutting loss and the uncertainty that it may exceed the limit by. */
  private void limit() {
    lines.figure(
        "loss_limit",
        Weight.of(LossLimit.of(settings, balance())),
        "limit.cutting_loss_pct of boning; limit.hanging_pct_per_day for days without a weighing");
    lines.root(
        "loss_u",
        output(Outputs::uncertaintySquared),
        "root of balance_u^2 + balance_scale^2: the loss waits beyond the limit by more than this");
  }

  /** The scales of the balance's equation and how often each was used. */
  private void divisions() {
    Stream.of(balance().boningWeighings(), balance().outOfBoning())
        .flatMap(List::stream)
        .map(Weighing::scale)
        .collect(Collectors.groupingBy(Scale::id, TreeMap::new, Collectors.toList()))
        .forEach(
            (id, uses) ->
                lines.text(
                    "  scale %s: %s weighings, d %s  scales.csv"
                        .formatted(id, uses.size(), uses.get(0).division())));
  }

  private <T> Optional<T> output(Function<Outputs, T> figure) {
    return balance().outputs().map(figure);
  }

  private <T> Optional<T> perhaps(Function<Outputs, Optional<T>> figure) {
    return balance().outputs().flatMap(figure);
  }
}
