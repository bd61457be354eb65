package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Place;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tells which of two moments a row means in the hour that comes twice at the end of summer time. In
 * each file the order of a scale's rows decides: the first pass until its clock is seen to go back.
 * A weighing that one file has placed so is placed alike in the others, with what stands after or
 * before it there. Where nothing tells, the first pass is taken and that is said.
 */
final class ClockChanges {
  private static final int ISO_DATE = 10;

  private final ExportTimes times;
  private final Map<String, Boolean> changing = new HashMap<>();
  private final Map<String, RowOrder> orders = new HashMap<>();
  private final Map<String, List<Seen>> repeated = new LinkedHashMap<>();
  private final Map<String, List<Seen>> skipped = new LinkedHashMap<>();
  private final Set<Place> second = new HashSet<>();
  private final Map<String, Boolean> known = new HashMap<>();
  private final List<Notice> notices = new ArrayList<>();

  /** A row with a local time that comes twice or never. */
  record Seen(ExportRow row, LocalDateTime time) {
    String scale() {
      return row.get(Field.SCALE);
    }

    /** The weighing, as every file that holds it writes it. */
    String weighing() {
      String ticket = row.get(Field.TICKET);
      return scale() + '\n' + time + '\n' + (ticket.isEmpty() ? row.raw() : ticket);
    }
  }

  ClockChanges(ExportTimes times) {
    this.times = times;
  }

  /** Looks at a row; rows come in file and line order. */
  void look(ExportRow row) {
    String text = row.get(Field.TIME);
    String day = text.substring(0, Math.min(ISO_DATE, text.length()));
    if (!changing.computeIfAbsent(day, this::isChanging)) {
      return;
    }
    var local = times.local(text);
    if (local.isEmpty()) {
      return;
    }
    var seen = new Seen(row, local.get());
    String scale = seen.scale() + '\n' + seen.time().toLocalDate();
    String clock = row.place().file() + '\n' + scale;
    orders.computeIfAbsent(clock, c -> new RowOrder()).add(row, local.get());
    int offsets = times.zone().getRules().getValidOffsets(local.get()).size();
    if (offsets == 0) {
      skipped.computeIfAbsent(scale, c -> new ArrayList<>()).add(seen);
    } else if (offsets > 1) {
      repeated.computeIfAbsent(clock, c -> new ArrayList<>()).add(seen);
    }
  }

  /** Decides, once every row has been looked at. */
  void decide() {
    place();
    skipped.values().forEach(group -> notices.add(ClockChangeNotices.skipped(group, times.zone())));
  }

  private boolean isChanging(String day) {
    try {
      var start = LocalDate.parse(day).atStartOfDay();
      var rules = times.zone().getRules();
      return !rules.getOffset(start).equals(rules.getOffset(start.plusDays(1)));
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** The moment that a row's time means; before {@link #decide} always the first pass. */
  Optional<OffsetDateTime> time(ExportRow row) {
    var first = times.read(row.get(Field.TIME));
    return second.contains(row.place())
        ? first.map(
            t -> t.atZoneSimilarLocal(times.zone()).withLaterOffsetAtOverlap().toOffsetDateTime())
        : first;
  }

  /** What could not be told, and hours that do not exist; one a scale and day. */
  List<Notice> notices() {
    return notices;
  }

  private void place() {
    repeated.forEach(
        (clock, seen) -> {
          if (orders.get(clock).isNewestFirst()) {
            Collections.reverse(seen);
          }
        });
    for (var clock : repeated.values()) {
      int back = back(clock);
      for (int i = 0; back > 0 && i < clock.size(); i++) {
        known.putIfAbsent(clock.get(i).weighing(), i >= back);
      }
    }
    var unclear = new LinkedHashMap<String, Map<String, Seen>>();
    for (var clock : repeated.values()) {
      for (var seen : follow(clock)) {
        unclear
            .computeIfAbsent(
                seen.scale() + '\n' + seen.time().toLocalDate(), k -> new LinkedHashMap<>())
            .putIfAbsent(seen.weighing(), seen);
      }
    }
    unclear
        .values()
        .forEach(
            group ->
                notices.add(ClockChangeNotices.unclear(List.copyOf(group.values()), times.zone())));
  }

  /** Where the clock of a file's scale is first seen to go back; 0 if it never is. */
  private static int back(List<Seen> clock) {
    for (int i = 1; i < clock.size(); i++) {
      if (clock.get(i).time().isBefore(clock.get(i - 1).time())) {
        return i;
      }
    }
    return 0;
  }

  /** Places the rows of one clock; returns those of which nothing tells. */
  private List<Seen> follow(List<Seen> clock) {
    int back = back(clock);
    int lastFirst = back - 1;
    int firstSecond = back > 0 ? back : clock.size();
    for (int i = 0; back == 0 && i < clock.size(); i++) {
      var told = known.get(clock.get(i).weighing());
      if (told != null && told) {
        firstSecond = Math.min(firstSecond, i);
      } else if (told != null) {
        lastFirst = i;
      }
    }
    var unclear = new ArrayList<Seen>();
    for (int i = 0; i < clock.size(); i++) {
      if (i >= firstSecond) {
        second.add(clock.get(i).row().place());
      }
      if (i > lastFirst && i < firstSecond) {
        unclear.add(clock.get(i));
      }
    }
    return unclear;
  }
}
