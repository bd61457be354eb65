package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Kind;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds a loss that is as high as bone, fat or waste is low: a tub of it was not weighed. */
final class MissingBin {
  private static final long PENALTY = 300;

  /** A share so many spreads below the usual is far below it. */
  private static final long SPREADS_BELOW = 2;

  /** The excess of the loss equals what the bins lack within three spreads of both together. */
  private static final long AGREE = UsualRange.strainOf(3);

  private final RowIndex rows;
  private final BodyFacts suspect;
  private final BodyBalance balance;

  MissingBin(RowIndex rows, BodyFacts suspect) {
    this.rows = rows;
    this.suspect = suspect;
    this.balance = suspect.balance();
  }

  /** A suggestion for each kind of bin that would explain a loss above the limit. */
  List<ScoredSuggestion> suggestions() {
    return suspect.testedLoss().isPresent() && Faults.codes(suspect).contains(ReasonCode.LOSS_HIGH)
        ? Stream.of(Kind.BONE, Kind.FAT, Kind.WASTE)
            .flatMap(
                kind ->
                    rows
                        .usual()
                        .bin(suspect.species(), kind)
                        .flatMap(usual -> suggestion(kind, usual))
                        .stream())
            .toList()
        : List.of();
  }

  private Optional<ScoredSuggestion> suggestion(Kind kind, UsualRange usual) {
    var lossRange = rows.usual().loss(suspect.species());
    var usualLoss = ofLimit(lossRange.middle());
    var missing = suspect.testedLoss().orElseThrow().part().fraction().subtract(usualLoss);
    long found = Usual.binned(balance, kind).orElse(0L);
    long lacking = usual.middle() - found;
    long excess = ofBoning(missing);
    long strain =
        new UsualRange(lacking, usual.spread() + ofBoning(ofLimit(lossRange.spread())))
            .strain(excess);
    if (lacking < SPREADS_BELOW * usual.spread() || excess <= 0 || strain > AGREE) {
      return Optional.empty();
    }
    var evidence =
        Phrase.of("LIKELY_CAUSE.BIN_NOT_WEIGHED")
            .with("body", suspect.id())
            .with("kind", Phrase.of("KIND." + kind))
            .with("found", percent(found))
            .with("expected", percent(usual.middle()))
            .with("missing", Weight.of(missing), rows.unit());
    return Optional.of(
        new ScoredSuggestion(
            Suggestion.missing(
                suspect,
                Cause.BIN_NOT_WEIGHED,
                evidence,
                Share.of(Optional.of(Weight.of(usualLoss)), balance.boning())),
            PENALTY + strain - suspect.strain(),
            Cause.BIN_NOT_WEIGHED + kind.name()));
  }

  /** So many millionths of the loss that the shop allows this body, as a weight. */
  private BigFraction ofLimit(long millionths) {
    return LossLimit.of(rows.night().shop().settings(), balance)
        .multiply(BigFraction.of(millionths, 1_000_000));
  }

  /** A weight in millionths of the weight into the boning room. */
  private long ofBoning(BigFraction weight) {
    return Usual.millionths(weight, balance.boning().orElseThrow().fraction()).orElse(0L);
  }

  private static Value percent(long millionths) {
    return new Value.Percent(BigFraction.of(millionths, 1_000_000).multiply(Exact.HUNDRED));
  }
}
