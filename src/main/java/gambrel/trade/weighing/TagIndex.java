package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
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
  Optional<String> find(String text) {
    return index.find(text);
  }

  /** The bodies for which a tag counts on {@code date}; all that have it, if that is unknown. */
  List<Body> bodies(String tag, Optional<LocalDate> date) {
    return byTag.getOrDefault(tag, List.of()).stream()
        .filter(body -> date.isEmpty() || counts(body, date.get()))
        .toList();
  }

  private static boolean counts(Body body, LocalDate date) {
    return days(body, date).filter(d -> -DAYS_AFTER <= d && d <= DAYS_BEFORE).isPresent();
  }

  /**
   * Why a tag counts for no body on {@code date}, with the body killed nearest to it; empty if no
   * body has the tag.
   */
  Optional<Notice> outOfTime(String text, LocalDate date) {
    return find(text)
        .flatMap(
            match ->
                byTag.get(match).stream()
                    .min(
                        Comparator.comparing(
                            body -> days(body, date).map(Math::abs).orElse(Long.MAX_VALUE))))
        .map(body -> outOfTime(text, body, days(body, date)));
  }

  /** The days from the kill to {@code date}; empty if the day of the kill is unknown. */
  private static Optional<Long> days(Body body, LocalDate date) {
    return body.killed().map(killed -> ChronoUnit.DAYS.between(killed, date));
  }

  private static Notice outOfTime(String tag, Body body, Optional<Long> days) {
    long since = days.orElse(0L);
    String variant = days.isEmpty() ? "UNDATED" : since < 0 ? "KILLED_LATER" : "KILLED";
    return Notice.of(NoticeCode.BODY_UNKNOWN, variant)
        .with("tag", tag)
        .with("named", body.id())
        .with("days", Math.abs(since))
        .with("most_before", DAYS_AFTER)
        .with("most_after", DAYS_BEFORE);
  }
}
