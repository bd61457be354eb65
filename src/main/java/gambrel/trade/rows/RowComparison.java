package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Compares rows with each other: repeats, voids, and tickets with more than one content.
 * CorrectedRows are given in file and line order; later rows repeat earlier ones. Only {@link
 * RepeatCandidates} need be given.
 */
public final class RowComparison {
  private static final int MOST_NAMED = 5;

  private static final Comparator<KeyedRow> BY_TIME =
      Comparator.comparing(
              (KeyedRow row) ->
                  row.read().time().map(OffsetDateTime::toInstant).orElse(java.time.Instant.MIN))
          .thenComparing(KeyedRow::place);

  private final List<KeyedRow> rows;
  private final OffsetDateTime asOf;
  private final Map<Place, RowDisposition> fates = new HashMap<>();
  private final Map<String, List<KeyedRow>> byKey = new LinkedHashMap<>();
  private Map<String, List<KeyedRow>> byTicket;
  private final List<Notice> notices = new ArrayList<>();

  private RowComparison(List<KeyedRow> rows, OffsetDateTime asOf) {
    this.rows = rows;
    this.asOf = asOf;
  }

  /** Compares {@code rows}. */
  public static RowComparison of(List<KeyedRow> rows, OffsetDateTime asOf) {
    var comparison = new RowComparison(rows, asOf);
    var voids = comparison.findRepeats();
    voids.stream().sorted(BY_TIME).forEach(comparison::cancel);
    comparison.byKey.values().forEach(comparison::findConflict);
    return comparison;
  }

  /** What becomes of the row at a place; of one that was not compared that it stands. */
  public RowDisposition fate(Place row) {
    return fates.getOrDefault(row, RowDisposition.USED);
  }

  private RowDisposition fate(KeyedRow row) {
    return fate(row.place());
  }

  public List<Notice> notices() {
    return notices;
  }

  /** Marks repeats and rows that a correction removes; returns the void rows that act. */
  private List<KeyedRow> findRepeats() {
    var seen = new HashSet<Identity>();
    var voids = new ArrayList<KeyedRow>();
    for (var row : rows) {
      if (row.read().removed()) {
        fates.put(row.place(), RowDisposition.VOID);
      } else if (!seen.add(Identity.of(row))) {
        fates.put(row.place(), RowDisposition.REPEAT);
      } else if (!row.status().isVoid()) {
        byKey.computeIfAbsent(row.key(), k -> new ArrayList<>(1)).add(row);
      } else if (row.read().effective(asOf)) {
        fates.put(row.place(), RowDisposition.VOID);
        voids.add(row);
      }
    }
    return voids;
  }

  /** What a row and its repeats have in common; of a void its status is the content. */
  private record Identity(String key, Object content) {
    private static Identity of(KeyedRow row) {
      return new Identity(row.key(), row.status().isVoid() ? row.status() : row.content());
    }
  }

  /**
   * CorrectedRows that are no voids, by ticket; most shops' voids name none, so this is made when
   * needed.
   */
  private List<KeyedRow> withTicket(KeyedRow row, String ticket) {
    if (byTicket == null) {
      byTicket = new HashMap<>();
      for (var each : rows) {
        if (!each.read().removed()
            && !each.status().isVoid()
            && fate(each) != RowDisposition.REPEAT) {
          String own = RepeatCandidates.ticket(each.read(), each.read().ticket());
          byTicket.computeIfAbsent(own, k -> new ArrayList<>()).add(each);
        }
      }
    }
    return byTicket.getOrDefault(RepeatCandidates.ticket(row.read(), ticket), List.of());
  }

  private void cancel(KeyedRow row) {
    if (row.status() instanceof Status.VoidTicket other) {
      cancelNearest(row, other.ticket());
    } else {
      byKey.getOrDefault(row.key(), List.of()).stream().filter(this::standing).forEach(this::drop);
    }
  }

  private void cancelNearest(KeyedRow row, String ticket) {
    KeyedRow nearest = null;
    for (var candidate : withTicket(row, ticket)) {
      if (standing(candidate) && isBefore(candidate, row) && isNearer(candidate, nearest, row)) {
        nearest = candidate;
      }
    }
    if (nearest != null) {
      drop(nearest);
    } else {
      notices.add(
          row.read().about(Notice.of(NoticeCode.VOID_UNUSED, row.place())).with("voided", ticket));
    }
  }

  private boolean standing(KeyedRow row) {
    return fate(row) == RowDisposition.USED && row.read().effective(asOf);
  }

  private void drop(KeyedRow row) {
    fates.put(row.place(), RowDisposition.VOID);
  }

  private static boolean isBefore(KeyedRow candidate, KeyedRow row) {
    return candidate.read().time().isPresent()
        && row.read().time().isPresent()
        && !candidate.read().time().get().isAfter(row.read().time().get());
  }

  /** Later is nearer; at one time the last before the void in its file, then the first after it. */
  private static boolean isNearer(KeyedRow candidate, KeyedRow nearest, KeyedRow row) {
    if (nearest == null) {
      return true;
    }
    int byTime = candidate.read().time().get().compareTo(nearest.read().time().get());
    if (!candidate.read().time().get().isEqual(nearest.read().time().get())) {
      return byTime > 0;
    }
    boolean before = candidate.place().compareTo(row.place()) < 0;
    return before && candidate.place().compareTo(nearest.place()) > 0;
  }

  private void findConflict(List<KeyedRow> rows) {
    var standing = rows.stream().filter(row -> fate(row) == RowDisposition.USED).toList();
    if (standing.size() < 2) {
      return;
    }
    for (var row : standing) {
      fates.put(row.place(), RowDisposition.SET_ASIDE);
      notices.add(conflict(row, standing));
    }
  }

  /** What another row says differently. */
  private static Phrase difference(KeyedRow row, KeyedRow other) {
    var differences = new ArrayList<Phrase>();
    for (var field : Field.values()) {
      String text = other.read().row().get(field);
      boolean told = field != Field.OPERATOR && field != Field.STATUS;
      if (told && !row.read().row().get(field).equals(text)) {
        differences.add(
            Phrase.of(text.isEmpty() ? "CONFLICT.BLANK" : "CONFLICT.CELL")
                .with("column", field.id())
                .with("cell", other.read().row().quoted(field)));
      }
    }
    return Phrase.of("CONFLICT.ROW")
        .with("place", other.place().toString())
        .with("cells", new Value.Phrases(differences, ", "));
  }

  private static Notice conflict(KeyedRow row, List<KeyedRow> rows) {
    var others = rows.stream().filter(r -> r != row).limit(MOST_NAMED + 1).toList();
    var named = others.stream().limit(MOST_NAMED).map(r -> difference(row, r)).toList();
    Value list = new Value.Phrases(named, ", ");
    var notice =
        row.read().ticket().isEmpty()
            ? Notice.of(NoticeCode.TICKET_CONFLICT, "NO_TICKET", row.place())
            : Notice.of(NoticeCode.TICKET_CONFLICT, row.place());
    return row.read()
        .about(notice)
        .with(
            "others",
            others.size() > MOST_NAMED ? Phrase.of("LIST.MORE").with("named", list) : list);
  }
}
