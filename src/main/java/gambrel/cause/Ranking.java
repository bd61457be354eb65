package gambrel.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/** Chooses which suggestions are worth saying. */
final class Ranking {
  private static final int MOST = 3;

  /** What fits so much worse than the best is not worth saying beside it. */
  private static final long ABOUT_EQUAL = 300;

  private Ranking() {}

  /** The best, and what fits about as well: at most three, one of a kind. */
  static List<Suggestion> best(List<Fit> fits) {
    var sorted = fits.stream().sorted(Comparator.comparingLong(Fit::cost)).toList();
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
