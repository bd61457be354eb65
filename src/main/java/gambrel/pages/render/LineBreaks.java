package gambrel.pages.render;

import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.DefaultLineBreakingStrategy;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;

/**
 * The layout engine's line breaks, except those after an apostrophe or a full stop within a word:
 * {@code l’animal} and {@code bodies.csv} are not broken.
 */
final class LineBreaks implements LineBreakingStrategy {
  private static final String WITHIN_WORDS = "\u2019'.";

  private final LineBreakingStrategy usual = new DefaultLineBreakingStrategy();

  @Override
  public BreakPointsProvider getBreakPointsProvider(
      String text, String language, CalculatedStyle style) {
    var points = usual.getBreakPointsProvider(text, language, style);
    return () -> next(points, text);
  }

  private static BreakPoint next(BreakPointsProvider points, String text) {
    var point = points.next();
    while (point != null && isWithinWord(text, point.getPosition())) {
      point = points.next();
    }
    return point;
  }

  private static boolean isWithinWord(String text, int position) {
    return position > 0
        && position < text.length()
        && WITHIN_WORDS.indexOf(text.charAt(position - 1)) >= 0
        && Character.isLetterOrDigit(text.charAt(position));
  }
}
