package gambrel.insight.cause;

import gambrel.trade.cuts.Kind;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds a loss that is as high as bone, fat or waste is low: a tub of it was not weighed. */
final class MissingBin {
  private static final long PENALTY = 300;

  /** A share so many spreads below the usual is far below it. */
  private static final long SPREADS_BELOW = 2;

  /** What is lost and what is lacking agree within three spreads of both together. */
  private static final long AGREE = 9 * UsualRange.ONE;

  private final RowIndex traces;
  private final EvidenceValues speech;

  MissingBin(RowIndex traces) {
    this.traces = traces;
    this.speech = new EvidenceValues(traces.night());
  }

  List<ScoredSuggestion> fits(BodyFacts suspect) {
    var fits = new ArrayList<ScoredSuggestion>();
    if (suspect.isWeighedOut()
        && Faults.of(suspect.account()).contains(new Reason(ReasonCode.LOSS_HIGH, ""))) {
      for (var kind : List.of(Kind.BONE, Kind.FAT, Kind.WASTE)) {
        traces
            .usual()
            .bin(suspect.account().body().species(), kind)
            .flatMap(band -> fit(suspect, kind, band))
            .ifPresent(fits::add);
      }
    }
    return fits;
  }

  private Optional<ScoredSuggestion> fit(BodyFacts suspect, Kind kind, UsualRange band) {
    var balance = suspect.balance();
    var boning = balance.boning().orElseThrow();
    long share = Usual.binned(balance, kind).orElse(0L);
    long lacking = band.middle() - share;
    var limit = LossLimit.of(traces.night().shop().settings(), balance);
    var lossBand = traces.usual().loss(suspect.account().body().species());
    var usual = limit.multiply(BigFraction.of(lossBand.middle(), 1_000_000));
    var missing = balance.shares().cuttingLoss().orElseThrow().part().fraction().subtract(usual);
    long excess = Usual.millionths(missing, boning.fraction()).orElse(0L);
    long lossSpread =
        Usual.millionths(
                limit.multiply(BigFraction.of(lossBand.spread(), 1_000_000)), boning.fraction())
            .orElse(0L);
    long both = band.spread() + lossSpread;
    long strain = new UsualRange(lacking, both).strain(excess);
    if (lacking < SPREADS_BELOW * band.spread() || excess <= 0 || strain > AGREE) {
      return Optional.empty();
    }
    return Optional.of(
        new ScoredSuggestion(
            Suggestion.missing(
                suspect,
                Cause.BIN_NOT_WEIGHED,
                evidence(suspect, kind, band, share, missing),
                Share.of(Optional.of(Weight.of(usual)), balance.boning())),
            PENALTY + strain - suspect.strain(),
            Cause.BIN_NOT_WEIGHED + kind.name()));
  }

  private Phrase evidence(
      BodyFacts suspect, Kind kind, UsualRange band, long share, BigFraction missing) {
    return Phrase.of("LIKELY_CAUSE.BIN_NOT_WEIGHED")
        .with("body", suspect.id())
        .with("kind", Phrase.of("KIND." + kind))
        .with("found", ofBoning(share))
        .with("expected", ofBoning(band.middle()))
        .with("missing", speech.weight(Weight.of(missing)));
  }

  private static Value ofBoning(long millionths) {
    return new Value.Percent(BigFraction.of(millionths, 1_000_000).multiply(Exact.HUNDRED));
  }
}
