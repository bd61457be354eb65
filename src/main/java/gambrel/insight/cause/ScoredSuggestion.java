package gambrel.insight.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/**
 * A suggestion and how well it fits.
 *
 * @param suggestion what to say
 * @param cost low is good, on the scale of {@link UsualRange#strain}
 * @param kind what it has in common with others of which only the best is worth saying
 */
record ScoredSuggestion(Suggestion suggestion, long cost, String kind) {
  private static final int MOST = 3;

  /** A suggestion that costs so much more than the best is not worth saying beside it. */
  private static final long ABOUT_EQUAL = 300;

  /** The best suggestion, and those that fit about as well: at most three, one of a kind. */
  static List<Suggestion> best(List<ScoredSuggestion> fits) {
    var sorted = fits.stream().sorted(Comparator.comparingLong(ScoredSuggestion::cost)).toList();
    var kinds = new HashSet<String>();
    var best = new ArrayList<Suggestion>();
    for (var fit : sorted) {
      boolean about = fit.cost() <= sorted.get(0).cost() + ABOUT_EQUAL;
      if (about && best.size() < MOST && kinds.add(fit.kind())) {
        best.add(fit.suggestion());
      }
    }
    return best;
  }
}
