package gambrel.insight.usual;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.trade.measure.Share;
import gambrel.trade.shop.PublishedRanges.Range;
import java.util.List;

/**
 * How the figures of a body compare with those of like bodies.
 *
 * @param bodies how many like bodies
 * @param figures each figure that was compared
 */
public record Comparison(int bodies, List<Compared> figures) {
  /** What a comparison shows. */
  public enum Verdict {
    /** Within the range, and an error that matters would have shown. */
    USUAL,
    /** Within the range, which is too wide for more to be said. */
    WITHIN,
    /** Below the range. */
    BELOW,
    /** Above the range. */
    ABOVE
  }

  /**
   * A figure of the body.
   *
   * @param figure the figure
   * @param share its value
   * @param bodies how many like bodies have it
   * @param range the range; its ends are as printed
   * @param verdict what the comparison shows
   */
  public record Compared(BodyFigure figure, Share share, int bodies, Range range, Verdict verdict) {
    /** Whether it lies outside the range. */
    public boolean isOutside() {
      return verdict == Verdict.BELOW || verdict == Verdict.ABOVE;
    }
  }

  /** Whether a figure lies outside its range. */
  public boolean isOutside() {
    return figures.stream().anyMatch(Compared::isOutside);
  }

  /** The figures that are usual. */
  public List<BodyFigure> usual() {
    return figures.stream()
        .filter(of -> of.verdict() == Verdict.USUAL)
        .map(Compared::figure)
        .toList();
  }
}
