package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Decides which of two moments a row means in the hour that comes twice at the end of summer time.
 * In each file the order of a scale's rows decides: they are in the first pass until the times go
 * back. A weighing that one file places in this way has the same place in every other file, with
 * the rows before or after it there. If nothing decides, the first pass is taken and a notice says
 * so.
 */
final class ClockChanges {
  private static final int ISO_DATE = 10;

  /** So many more steps back than forward mean a list from the newest row to the oldest. */
  private static final int PLAINLY_BACK = 3;

  private final ExportTimes times;
  private final ZoneId zone;
  private final Set<Place> secondPass = new HashSet<>();
  private final List<Notice> notices = new ArrayList<>();

  /** A row with its local time, on a day on which the clock changes. */
  private record Timed(ExportRow row, LocalDateTime time) {
    private String scale() {
      return row.get(Field.SCALE);
    }

    private String scaleDay() {
      return scale() + '\n' + time.toLocalDate();
    }

    /** The clock that wrote the time, in one file and on one day. */
    private String clock() {
      return row.place().file() + '\n' + scaleDay();
    }

    /** The weighing; every file that holds it has the same text. */
    private String weighing() {
      String ticket = row.get(Field.TICKET);
      return scale() + '\n' + time + '\n' + (ticket.isEmpty() ? row.raw() : ticket);
    }
  }

  /** Reads the times of {@code rows}, which come in file and line order. */
  ClockChanges(ExportTimes times, Stream<ExportRow> rows) {
    this.times = times;
    this.zone = times.zone();
    var changes = new HashMap<String, Boolean>();
    var timed =
        rows.filter(row -> changes.computeIfAbsent(day(row), this::isDayOfChange))
            .flatMap(row -> timed(row).stream());
    var clocks = Groups.inOrder(timed, Timed::clock).values();
    var repeated = clocks.stream().map(this::inRepeatedHour).toList();
    var inSecondPass = new HashMap<String, Boolean>();
    for (var clock : repeated) {
      int back = stepBack(clock);
      for (int i = 0; back > 0 && i < clock.size(); i++) {
        inSecondPass.putIfAbsent(clock.get(i).weighing(), i >= back);
      }
    }
    var unclear = new LinkedHashMap<String, Timed>();
    for (var clock : repeated) {
      place(clock, inSecondPass).forEach(row -> unclear.putIfAbsent(row.weighing(), row));
    }
    addNotices(unclear.values().stream(), this::unclear);
    addNotices(
        clocks.stream().flatMap(List::stream).filter(row -> offsets(row) == 0), this::skipped);
  }

  private static String day(ExportRow row) {
    String text = row.get(Field.TIME);
    return text.substring(0, Math.min(ISO_DATE, text.length()));
  }

  private Optional<Timed> timed(ExportRow row) {
    return times.local(row.get(Field.TIME)).map(time -> new Timed(row, time));
  }

  private boolean isDayOfChange(String day) {
    try {
      var start = LocalDate.parse(day).atStartOfDay();
      var rules = zone.getRules();
      return !rules.getOffset(start).equals(rules.getOffset(start.plusDays(1)));
    } catch (DateTimeException e) {
      return false;
    }
  }

  private int offsets(Timed row) {
    return zone.getRules().getValidOffsets(row.time()).size();
  }

  /** The rows of one clock in the hour that comes twice, oldest first as far as can be seen. */
  private List<Timed> inRepeatedHour(List<Timed> clock) {
    var repeated = new ArrayList<>(clock);
    repeated.removeIf(row -> offsets(row) < 2);
    if (isNewestFirst(clock)) {
      Collections.reverse(repeated);
    }
    return repeated;
  }

  /** Whether the rows come from the newest to the oldest: by ticket numbers, else by times. */
  private static boolean isNewestFirst(List<Timed> clock) {
    int byTicket = 0;
    int byTime = 0;
    boolean numbered = false;
    for (int i = 1; i < clock.size(); i++) {
      String before = clock.get(i - 1).row().get(Field.TICKET);
      String ticket = clock.get(i).row().get(Field.TICKET);
      if (Tickets.isNumber(before) && Tickets.isNumber(ticket)) {
        numbered = true;
        byTicket += Integer.signum(Tickets.compare(ticket, before));
      }
      byTime += Integer.signum(clock.get(i).time().compareTo(clock.get(i - 1).time()));
    }
    return numbered ? byTicket < 0 : byTime <= -PLAINLY_BACK;
  }

  /** Adds one notice for each scale and day. */
  private void addNotices(Stream<Timed> rows, Function<List<Timed>, Notice> notice) {
    Groups.inOrder(rows, Timed::scaleDay).values().stream().map(notice).forEach(notices::add);
  }

  /** The first position at which the time goes back; 0 if it never does. */
  private static int stepBack(List<Timed> clock) {
    return IntStream.range(1, clock.size())
        .filter(i -> clock.get(i).time().isBefore(clock.get(i - 1).time()))
        .findFirst()
        .orElse(0);
  }

  /** Places the rows of one clock in a pass; returns the rows whose pass is unclear. */
  private List<Timed> place(List<Timed> clock, Map<String, Boolean> inSecondPass) {
    int back = stepBack(clock);
    int firstPassEnds = back;
    int secondPassBegins = back > 0 ? back : clock.size();
    for (int i = clock.size() - 1; back == 0 && i >= 0; i--) {
      var second = inSecondPass.get(clock.get(i).weighing());
      if (second != null && second) {
        secondPassBegins = i;
      } else if (second != null) {
        firstPassEnds = Math.max(firstPassEnds, i + 1);
      }
    }
    clock.subList(secondPassBegins, clock.size()).forEach(row -> secondPass.add(row.row().place()));
    return clock.subList(Math.min(firstPassEnds, secondPassBegins), secondPassBegins);
  }

  /** The moment that a row's time means; empty if it cannot be read. */
  Optional<OffsetDateTime> time(ExportRow row) {
    var first = times.read(row.get(Field.TIME));
    return secondPass.contains(row.place()) ? first.map(this::later) : first;
  }

  private OffsetDateTime later(OffsetDateTime time) {
    return time.atZoneSimilarLocal(zone).withLaterOffsetAtOverlap().toOffsetDateTime();
  }

  /** Notices about times in the hour that comes twice or is skipped. */
  List<Notice> notices() {
    return notices;
  }

  private Notice unclear(List<Timed> rows) {
    var first = rows.get(0).time().atZone(zone).toOffsetDateTime();
    return notice(NoticeCode.HOUR_REPEATED, rows)
        .with("second", later(first).toString())
        .advising("OFFSET");
  }

  private Notice skipped(List<Timed> rows) {
    var first = rows.get(0).time();
    return notice(NoticeCode.HOUR_SKIPPED, rows)
        .with("time", first)
        .with("taken", first.atZone(zone).toLocalDateTime());
  }

  private static Notice notice(NoticeCode code, List<Timed> rows) {
    var first = rows.get(0);
    return Notice.of(code, first.row().place())
        .aboutTicket(first.scale(), first.row().get(Field.TICKET))
        .quoting(first.row().raw())
        .with("count", rows.size())
        .with("date", first.time().toLocalDate());
  }
}
