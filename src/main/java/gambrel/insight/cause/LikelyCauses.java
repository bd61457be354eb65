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
 * @param byBody at most three suggestions for each body, best first; bodies without one have no
 *     entry
 * @param notLookedAt how many more bodies do not balance and were not examined
 */
public record LikelyCauses(SortedMap<String, List<Suggestion>> byBody, int notLookedAt) {
  /** So many bodies are examined in a night, those weighed last first. */
  private static final int MOST_BODIES = 20;

  /** No suggestions. */
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
    var usual = new Usual(night);
    var suspects =
        night.bodies().values().stream()
            .map(account -> new BodyFacts(usual, account))
            .filter(BodyFacts::isSuspect)
            .sorted(Comparator.comparing(LikelyCauses::lastWeighed).reversed())
            .toList();
    if (suspects.isEmpty()) {
      return NONE;
    }
    var examiner = new Examiner(new RowIndex(usual, exports));
    var byBody = new TreeMap<String, List<Suggestion>>(ByteOrder.IDS);
    suspects.stream()
        .limit(MOST_BODIES)
        .forEach(suspect -> byBody.put(suspect.id, examiner.suggestions(suspect)));
    byBody.values().removeIf(List::isEmpty);
    return new LikelyCauses(byBody, Math.max(0, suspects.size() - MOST_BODIES));
  }

  private static Instant lastWeighed(BodyFacts facts) {
    var last = Weighing.last(facts.balance.weighings().all());
    return last.map(weighing -> weighing.time().toInstant()).orElse(Instant.MIN);
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
