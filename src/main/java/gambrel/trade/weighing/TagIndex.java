package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tags of bodies. Tags are used again, so each counts for some time around the kill only. */
final class TagIndex {
  /** A tag counts for bodies killed up to so many days before the weighing. */
  private static final int DAYS_BEFORE = 60;

  /** A tag counts for bodies killed up to so many days after the weighing. */
  private static final int DAYS_AFTER = 2;

  private final Map<String, List<Body>> byTag = new HashMap<>();
  private final IdIndex index;

  TagIndex(Collection<Body> bodies) {
    for (var body : bodies) {
      body.tags().forEach(tag -> byTag.computeIfAbsent(tag, t -> new ArrayList<>()).add(body));
    }
    index = new IdIndex(byTag.keySet());
  }

  /** The tag that a text means, on any date. */
  Optional<IdIndex.Match> find(String text) {
    return index.find(text);
  }

  /** The bodies for which a tag counts on {@code date}. */
  List<Body> bodies(String tag, LocalDate date) {
    return byTag.getOrDefault(tag, List.of()).stream()
        .filter(body -> body.killed().filter(killed -> counts(killed, date)).isPresent())
        .toList();
  }

  private static boolean counts(LocalDate killed, LocalDate date) {
    return !killed.isBefore(date.minusDays(DAYS_BEFORE))
        && !killed.isAfter(date.plusDays(DAYS_AFTER));
  }

  /**
   * Why a tag counts for no body on {@code date}, with the body killed nearest to it; empty if no
   * body has the tag.
   */
  Optional<Notice> outOfTime(String text, LocalDate date) {
    return find(text)
        .flatMap(
            match ->
                byTag.get(match.id()).stream()
                    .min(Comparator.comparing(body -> distance(body, date))))
        .map(body -> outOfTime(text, body, date));
  }

  private static Notice outOfTime(String tag, Body body, LocalDate date) {
    long days = body.killed().map(killed -> ChronoUnit.DAYS.between(killed, date)).orElse(0L);
    String variant = body.killed().isEmpty() ? "UNDATED" : days < 0 ? "KILLED_LATER" : "KILLED";
    return Notice.of(NoticeCode.BODY_UNKNOWN, variant, Place.NONE)
        .with("tag", tag)
        .with("named", body.id())
        .with("days", Math.abs(days))
        .with("most_before", DAYS_AFTER)
        .with("most_after", DAYS_BEFORE);
  }

  private static long distance(Body body, LocalDate date) {
    return body.killed()
        .map(killed -> Math.abs(ChronoUnit.DAYS.between(killed, date)))
        .orElse(Long.MAX_VALUE);
  }
}
