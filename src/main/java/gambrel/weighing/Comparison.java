package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.shop.IdIndex;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares rows with each other: repeats, voids, and tickets with more than one content. Rows are
 * given in file and line order; later rows repeat earlier ones.
 */
final class Comparison {
  private static final int MOST_NAMED = 5;

  private static final Comparator<ReadRow> BY_TIME =
      Comparator.comparing(
              (ReadRow row) -> row.time().map(OffsetDateTime::toInstant).orElse(java.time.Instant.MIN))
          .thenComparing(ReadRow::place);

  private final List<ReadRow> rows;
  private final OffsetDateTime asOf;
  private final Map<ReadRow, Fate> fates = new IdentityHashMap<>();
  private final Map<String, List<ReadRow>> byKey = new LinkedHashMap<>();
  private Map<String, List<ReadRow>> byTicket;
  private final List<Notice> notices = new ArrayList<>();

  private Comparison(List<ReadRow> rows, OffsetDateTime asOf) {
    this.rows = rows;
    this.asOf = asOf;
  }

  /** Compares {@code rows}. */
  static Comparison of(List<ReadRow> rows, OffsetDateTime asOf) {
    var comparison = new Comparison(rows, asOf);
    var voids = comparison.findRepeats();
    voids.stream().sorted(BY_TIME).forEach(comparison::cancel);
    comparison.byKey.values().forEach(comparison::findConflict);
    return comparison;
  }

  Fate fate(ReadRow row) {
    return fates.getOrDefault(row, Fate.USED);
  }

  List<Notice> notices() {
    return notices;
  }

  /** Marks repeats and rows that a correction removes; returns the void rows that act. */
  private List<ReadRow> findRepeats() {
    var seen = new HashSet<Identity>();
    var voids = new ArrayList<ReadRow>();
    for (var row : rows) {
      if (row.removed()) {
        fates.put(row, Fate.VOID);
      } else if (!seen.add(Identity.of(row))) {
        fates.put(row, Fate.REPEAT);
      } else if (!row.status().isVoid()) {
        byKey.computeIfAbsent(row.key(), k -> new ArrayList<>(1)).add(row);
      } else if (row.effective(asOf)) {
        fates.put(row, Fate.VOID);
        voids.add(row);
      }
    }
    return voids;
  }

  /** What a row and its repeats have in common; of a void its status is the content. */
  private record Identity(String key, Object content) {
    private static Identity of(ReadRow row) {
      return new Identity(row.key(), row.status().isVoid() ? row.status() : row.content());
    }
  }

  /** Rows that are no voids, by ticket; most shops' voids name none, so this is made when needed. */
  private List<ReadRow> withTicket(ReadRow row, String ticket) {
    if (byTicket == null) {
      byTicket = new HashMap<>();
      for (var each : rows) {
        if (!each.removed() && !each.status().isVoid() && fate(each) != Fate.REPEAT) {
          byTicket.computeIfAbsent(ticket(each, each.ticket()), k -> new ArrayList<>()).add(each);
        }
      }
    }
    return byTicket.getOrDefault(ticket(row, ticket), List.of());
  }

  private static String ticket(ReadRow row, String ticket) {
    return row.scale() + '\n' + IdIndex.withoutZeros(ticket);
  }

  private void cancel(ReadRow row) {
    if (row.status() instanceof Status.VoidTicket other) {
      cancelNearest(row, other.ticket());
    } else {
      byKey.getOrDefault(row.key(), List.of()).stream().filter(this::standing).forEach(this::drop);
    }
  }

  private void cancelNearest(ReadRow row, String ticket) {
    ReadRow nearest = null;
    for (var candidate : withTicket(row, ticket)) {
      if (standing(candidate) && isBefore(candidate, row) && isNearer(candidate, nearest, row)) {
        nearest = candidate;
      }
    }
    if (nearest != null) {
      drop(nearest);
    } else {
      notices.add(
          row.notice(
              NoticeCode.VOID_UNUSED,
              "Scale " + row.scale() + " has no ticket " + ticket + " before this void."));
    }
  }

  private boolean standing(ReadRow row) {
    return fate(row) == Fate.USED && row.effective(asOf);
  }

  private void drop(ReadRow row) {
    fates.put(row, Fate.VOID);
  }

  private static boolean isBefore(ReadRow candidate, ReadRow row) {
    return candidate.time().isPresent()
        && row.time().isPresent()
        && !candidate.time().get().isAfter(row.time().get());
  }

  /** Later is nearer; at one time the last before the void in its file, then the first after it. */
  private static boolean isNearer(ReadRow candidate, ReadRow nearest, ReadRow row) {
    if (nearest == null) {
      return true;
    }
    int byTime = candidate.time().get().compareTo(nearest.time().get());
    if (!candidate.time().get().isEqual(nearest.time().get())) {
      return byTime > 0;
    }
    boolean before = candidate.place().compareTo(row.place()) < 0;
    return before && candidate.place().compareTo(nearest.place()) > 0;
  }

  private void findConflict(List<ReadRow> rows) {
    var standing = rows.stream().filter(row -> fate(row) == Fate.USED).toList();
    if (standing.size() < 2) {
      return;
    }
    for (var row : standing) {
      fates.put(row, Fate.SET_ASIDE);
      notices.add(row.notice(NoticeCode.TICKET_CONFLICT, conflict(row, standing)));
    }
  }

  /** What another row says differently. */
  private static String difference(ExportRow row, ExportRow other) {
    return Stream.of(Field.values())
        .filter(field -> field != Field.OPERATOR && field != Field.STATUS)
        .filter(field -> !row.get(field).equals(other.get(field)))
        .map(field -> field.id() + " " + (other.get(field).isEmpty() ? "blank" : other.get(field)))
        .collect(Collectors.joining(", "));
  }

  private static String conflict(ReadRow row, List<ReadRow> rows) {
    var others = rows.stream().filter(r -> r != row).limit(MOST_NAMED + 1).toList();
    var named =
        others.stream()
            .limit(MOST_NAMED)
            .map(r -> r.place() + " (" + difference(row.row(), r.row()) + ")");
    String more = others.size() > MOST_NAMED ? " and more" : "";
    String what = row.ticket().isEmpty() ? "The same weighing" : "Ticket " + row.ticket();
    return what
        + " of scale "
        + row.scale()
        + " stands with other content at "
        + named.collect(Collectors.joining(", "))
        + more
        + ".";
  }
}
