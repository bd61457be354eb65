package gambrel.render;

import static java.util.Comparator.comparingInt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.Selector;
import org.xhtmlrenderer.css.sheet.MediaRule;
import org.xhtmlrenderer.css.sheet.Ruleset;
import org.xhtmlrenderer.css.sheet.Stylesheet;

/**
 * Style sheets put together, to be shared by all pages that have the same.
 *
 * @param pages tells what holds for whole pages and their margins; keeps no element
 * @param rules what waits for the root element
 */
record Cascade(Matcher pages, MatchedRules rules) {
  /** More paths than any sane page has: what else comes is matched anew each time. */
  private static final int ROOM = 20_000;

  /** By specificity (CSS 2.1, 6.4.3); what is equal stays in the order of the sheets. */
  private static final Comparator<Selector> PRECEDENCE =
      comparingInt(Selector::getSpecificityB)
          .thenComparingInt(Selector::getSpecificityC)
          .thenComparingInt(Selector::getSpecificityD);

  static Cascade of(List<Stylesheet> sheets, String medium) {
    var selectors = new ArrayList<Selector>();
    for (var sheet : sheets) {
      for (var part : sheet.getContents()) {
        if (part instanceof Ruleset rules) {
          selectors.addAll(rules.getFSSelectors());
        } else if (part instanceof MediaRule media && media.matches(medium)) {
          media.getContents().forEach(rules -> selectors.addAll(rules.getFSSelectors()));
        }
      }
    }
    selectors.sort(Comparator.comparing(Cascade::last, PRECEDENCE));
    var pages = new Matcher(new DOMTreeResolver(), null, null, sheets, medium);
    return new Cascade(pages, new MatchedRules(selectors, ROOM));
  }

  /** The last part of a selector knows how specific the whole is. */
  private static Selector last(Selector selector) {
    var last = selector;
    while (last.getChainedSelector() != null) {
      last = last.getChainedSelector();
    }
    return last;
  }
}
