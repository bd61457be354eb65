package gambrel.insight.cause;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;

/**
 * A suggestion and how well it explains the body's figures.
 *
 * @param suggestion what is suggested
 * @param cost lower is better, on the scale of {@link UsualRange#strain}
 * @param kind equal for suggestions of which only the best is listed
 */
record ScoredSuggestion(Suggestion suggestion, long cost, String kind) {
  private static final int MOST = 3;

  /** A suggestion that costs so much more than the best is not listed beside it. */
  private static final long ABOUT_EQUAL = 300;

  /** The best suggestion and those that cost about as much: at most three, one of each kind. */
  static List<Suggestion> best(List<ScoredSuggestion> all) {
    var kinds = new HashSet<String>();
    long least = all.stream().mapToLong(ScoredSuggestion::cost).min().orElse(0);
    return all.stream()
        .filter(scored -> scored.cost() <= least + ABOUT_EQUAL)
        .sorted(Comparator.comparingLong(ScoredSuggestion::cost))
        .filter(scored -> kinds.add(scored.kind()))
        .limit(MOST)
        .map(ScoredSuggestion::suggestion)
        .toList();
  }
}
