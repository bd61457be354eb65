package gambrel.insight.cause;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.weighing.Weighing;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What probably went wrong with the bodies that do not balance.
 *
 * @param byBody at most three suggestions a body, best first; bodies without one have no entry
 * @param notLookedAt how many bodies wait beyond those that were looked at
 */
public record LikelyCauses(SortedMap<String, List<Suggestion>> byBody, int notLookedAt) {
  /** So many bodies are looked at in a night, those weighed last first. */
  private static final int MOST_BODIES = 20;

  /** Nothing to suggest. */
  public static final LikelyCauses NONE = new LikelyCauses(new TreeMap<>(ByteOrder.IDS), 0);

  /** Copies the map. */
  public LikelyCauses {
    byBody = ByteOrder.sorted(byBody);
  }

  /**
   * Looks for the causes of a night.
   *
   * @param exports the rows that the night was reckoned from, in path order
   */
  public static LikelyCauses of(Night night, List<ExportFile> exports) {
    var traces = new RowIndex(night, exports);
    var suspects =
        night.bodies().keySet().stream()
            .map(traces::facts)
            .filter(facts -> Faults.isSuspect(facts, night))
            .sorted(Comparator.comparing(LikelyCauses::lastWeighed).reversed())
            .toList();
    if (suspects.isEmpty()) {
      return NONE;
    }
    var byBody = new TreeMap<String, List<Suggestion>>(ByteOrder.IDS);
    var examiner = new Examiner(traces);
    suspects.stream()
        .limit(MOST_BODIES)
        .forEach(
            suspect -> {
              var found = suggestions(suspect, traces, examiner);
              if (!found.isEmpty()) {
                byBody.put(suspect.id(), found);
              }
            });
    return new LikelyCauses(byBody, Math.max(0, suspects.size() - MOST_BODIES));
  }

  private static List<Suggestion> suggestions(
      BodyFacts suspect, RowIndex traces, Examiner examiner) {
    var fits = new ArrayList<>(examiner.fits(suspect));
    if (Faults.isUnbalanced(suspect.account(), traces.night())) {
      fits.addAll(new MissingBin(traces).fits(suspect));
      if (fits.isEmpty()) {
        new MissingPart(traces).fit(suspect).ifPresent(fits::add);
      }
    }
    return ScoredSuggestion.best(fits);
  }

  private static Instant lastWeighed(BodyFacts facts) {
    return facts.balance().weighings().all().stream()
        .map(Weighing::time)
        .map(time -> time.toInstant())
        .max(Comparator.naturalOrder())
        .orElse(Instant.MIN);
  }

  /** The suggestions for a body, best first. */
  public List<Suggestion> of(String body) {
    return byBody.getOrDefault(body, List.of());
  }

  /** All of them as notices. */
  public List<Notice> notices() {
    var notices = new ArrayList<Notice>();
    byBody.values().forEach(list -> list.forEach(s -> notices.addAll(s.notices())));
    if (notLookedAt > 0) {
      notices.add(
          Notice.of(NoticeCode.LIKELY_CAUSE, "NOT_LOOKED_AT", Place.NONE)
              .with("most", MOST_BODIES)
              .with("count", notLookedAt));
    }
    return notices;
  }
}
