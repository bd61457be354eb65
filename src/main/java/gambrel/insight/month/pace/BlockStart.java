package gambrel.insight.month.pace;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.SideLabels;
import gambrel.trade.cuts.Species;
import gambrel.trade.weighing.Weighing;
import java.time.Duration;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A weighing on the block at which a boner begins a piece.
 *
 * @param weighing of a topmost piece, with the boner's name
 * @param species of the body
 */
public record BlockStart(Weighing weighing, Species species) {
  private static final long MILLIS_A_MINUTE = 60_000;

  /** Those of a body. */
  public static List<BlockStart> of(BodyBalance body) {
    return body.topmostBlocks().stream()
        .filter(weighing -> !weighing.boner().isEmpty())
        .map(weighing -> new BlockStart(weighing, body.body().species()))
        .toList();
  }

  /** The piece until another is weighed. Left and right are one kind of piece. */
  BoningInterval until(Weighing next) {
    long millis = Duration.between(weighing.time(), next.time()).toMillis();
    return new BoningInterval(
        weighing.boner(),
        species,
        SideLabels.plain(weighing.item()),
        1,
        weighing.net(),
        BigFraction.of(millis, MILLIS_A_MINUTE));
  }
}
