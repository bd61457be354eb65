package gambrel.month.pace;

import gambrel.balance.BodyBalance;
import gambrel.cuts.SideLabels;
import gambrel.cuts.Species;
import gambrel.weighing.Weighing;
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
  Stint until(Weighing next) {
    long millis = Duration.between(weighing.time(), next.time()).toMillis();
    return new Stint(
        weighing.boner(),
        species,
        SideLabels.plain(weighing.item()),
        1,
        weighing.net(),
        BigFraction.of(millis, MILLIS_A_MINUTE));
  }
}
