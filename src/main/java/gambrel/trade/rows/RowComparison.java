package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Compares rows with each other: finds repeats, applies voids, and finds tickets with more than one
 * content. Of equal rows the first in file and line order is used, the others are repeats. A row
 * that says that it repeats, and repeats nothing, stays as one that would be used.
 */
public final class RowComparison {
  private static final int MOST_NAMED = 5;

  /** Cells in which a notice about a conflict does not look for differences. */
  private static final Set<Field> NOT_NAMED = Set.of(Field.OPERATOR, Field.STATUS);

  private static final Comparator<KeyedRow> BY_TIME =
      Comparator.comparing(
              (KeyedRow row) ->
                  row.read().time().map(OffsetDateTime::toInstant).orElse(Instant.MIN))
          .thenComparing(KeyedRow::place);

  private final OffsetDateTime asOf;
  private final Map<Place, RowDisposition> dispositions = new HashMap<>();
  private final Map<Place, ReadRow> cancelledBy = new HashMap<>();
  private final Map<Place, Notice> conflicts = new HashMap<>();
  private final List<Notice> notices = new ArrayList<>();

  private RowComparison(List<ReadRow> all, OffsetDateTime asOf) {
    this.asOf = asOf;
    var rows = numbered(KeyedRow.toCompare(all));
    var voids = findRepeats(rows);
    var standing = rows.stream().filter(row -> !row.status().isVoid() && isUsed(row)).toList();
    var byKey = Groups.inOrder(standing.stream(), row -> row.key().numbered(0));
    var byTicket = Groups.inOrder(standing.stream(), row -> row.read().ticketKey());
    var alone = new ArrayList<ReadRow>();
    for (var row : voids) {
      var named = row.status().voids();
      var other = named.filter(ticket -> !isOwn(row.read(), ticket));
      if (other.isPresent()) {
        cancelNearest(row, other.get(), byTicket);
      } else {
        var ofKey = byKey.getOrDefault(row.key().numbered(0), List.<KeyedRow>of());
        cancel(row, ofKey);
        if (ofKey.isEmpty() && named.isEmpty()) {
          alone.add(row.read());
        }
      }
    }
    byKey.values().forEach(this::findConflict);
    var counted = all.stream().filter(row -> disposition(row) == RowDisposition.USED);
    notices.addAll(LoneVoids.notices(alone, counted));
  }

  private static boolean isOwn(ReadRow row, String ticket) {
    return Tickets.key(row.scale(), ticket).equals(row.ticketKey());
  }

  /** Compares {@code rows}, which come in file and line order. */
  public static RowComparison of(List<ReadRow> rows, OffsetDateTime asOf) {
    return new RowComparison(rows, asOf);
  }

  /** What the comparison decides about a row. */
  public RowDisposition disposition(ReadRow row) {
    return row.removed()
        ? RowDisposition.VOID
        : dispositions.getOrDefault(row.place(), RowDisposition.USED);
  }

  /** The void row that cancels a row, or is that row itself; empty for any other row. */
  public Optional<ReadRow> cancelledBy(ReadRow row) {
    return Optional.ofNullable(cancelledBy.get(row.place()));
  }

  /** Why a row is set aside; null for a row with another disposition. */
  public Notice conflict(ReadRow row) {
    return conflicts.get(row.place());
  }

  /**
   * A notice for every void row that cancels nothing, or only itself though an equal weighing
   * stands just before it, and for every file with equal rows.
   */
  public List<Notice> notices() {
    return notices;
  }

  /**
   * The rows with the equal ones of layouts that give an identity numbered. Equal rows in one file
   * are different weighings: the first is number 0, the next number 1. Each file begins at 0 again.
   * Where files overlap, rows with one number are therefore the same weighing, and the file with
   * the most equal rows decides how many weighings there were. Each file with equal rows that are
   * no voids has a notice.
   *
   * @param rows in file and line order
   */
  private List<KeyedRow> numbered(List<KeyedRow> rows) {
    var next = new HashMap<List<Object>, Integer>();
    var numbered = new ArrayList<KeyedRow>();
    var equal = new ArrayList<KeyedRow>();
    for (var row : rows) {
      if (!row.key().isIdentity() || row.status().isRepeat()) {
        numbered.add(row);
        continue;
      }
      var key = List.of(row.place().file(), row.key(), row.compared());
      int number = next.merge(key, 1, Integer::sum) - 1;
      numbered.add(row.under(row.key().numbered(number)));
      if (number > 0 && !row.status().isVoid()) {
        equal.add(row);
      }
    }
    Groups.inOrder(equal.stream(), row -> row.place().file())
        .values()
        .forEach(
            of ->
                notices.add(
                    Notice.of(NoticeCode.ROWS_EQUAL, of.get(0).place()).with("count", of.size())));
    return numbered;
  }

  private boolean isUsed(KeyedRow row) {
    return disposition(row.read()) == RowDisposition.USED;
  }

  private boolean isEffective(KeyedRow row) {
    return isUsed(row) && row.read().effective(asOf);
  }

  private void cancel(KeyedRow row, KeyedRow by) {
    dispositions.put(row.place(), RowDisposition.VOID);
    cancelledBy.put(row.place(), by.read());
  }

  /**
   * Cancels the weighing that a void row stands on: of a ticket all rows, of an identity one of the
   * rows that are equal to it, else one if all are equal.
   *
   * @param rows those of the ticket or identity
   */
  private void cancel(KeyedRow row, List<KeyedRow> rows) {
    var standing = rows.stream().filter(this::isEffective).toList();
    if (!row.key().isIdentity()) {
      standing.forEach(other -> cancel(other, row));
      return;
    }
    standing.stream()
        .filter(candidate -> candidate.content().equals(row.content()))
        .findFirst()
        .or(() -> standing.stream().findFirst().filter(first -> areEqual(standing)))
        .ifPresent(other -> cancel(other, row));
  }

  private static boolean areEqual(List<KeyedRow> rows) {
    return rows.stream().map(KeyedRow::content).distinct().count() <= 1;
  }

  /**
   * Marks repeats and void rows in effect; returns these void rows, earliest first. Rows that say
   * that they repeat come last, so that a weighing never repeats its own reprint. A row whose
   * status is not understood repeats only rows with that status: it may be meant to cancel its
   * like.
   */
  private List<KeyedRow> findRepeats(List<KeyedRow> rows) {
    var seen = new HashSet<List<Object>>();
    var voids = new ArrayList<KeyedRow>();
    var byTicket = Groups.inOrder(rows.stream(), row -> row.read().ticketKey());
    var repeatsLast =
        rows.stream().sorted(Comparator.comparing(row -> row.status().isRepeat())).toList();
    for (var row : repeatsLast) {
      boolean isVoid = row.status().isVoid();
      String unknown = row.status().unknown().orElse("");
      if (!seen.add(List.of(row.key(), row.compared(), unknown))
          || row.status().isRepeat() && isPrinted(row, byTicket.get(row.read().ticketKey()))) {
        dispositions.put(row.place(), RowDisposition.REPEAT);
      } else if (isVoid && row.read().effective(asOf)) {
        cancel(row, row);
        voids.add(row);
      }
    }
    voids.sort(BY_TIME);
    return voids;
  }

  /** Whether one of the rows is the weighing, not dated later, that a row prints again. */
  private static boolean isPrinted(KeyedRow row, List<KeyedRow> ofTicket) {
    return ofTicket.stream().anyMatch(other -> row.printsAgain(other) && isBefore(other, row));
  }

  /** Cancels the row with that ticket that was weighed last at the time of the void row. */
  private void cancelNearest(KeyedRow row, String ticket, Map<String, List<KeyedRow>> byTicket) {
    byTicket.getOrDefault(Tickets.key(row.read().scale(), ticket), List.of()).stream()
        .filter(candidate -> isEffective(candidate) && isBefore(candidate, row))
        .reduce((nearest, candidate) -> isNearer(candidate, nearest, row) ? candidate : nearest)
        .ifPresentOrElse(
            other -> cancel(other, row),
            () ->
                notices.add(
                    row.read().about(Notice.of(NoticeCode.VOID_UNUSED)).with("voided", ticket)));
  }

  private static boolean isBefore(KeyedRow candidate, KeyedRow row) {
    return candidate.read().time().isPresent()
        && row.read().time().filter(time -> !time(candidate).isAfter(time)).isPresent();
  }

  private static OffsetDateTime time(KeyedRow row) {
    return row.read().time().orElseThrow();
  }

  /**
   * Whether a candidate is nearer to a void row than one that comes earlier in the exports. The
   * later time is nearer; at equal times the last row above the void row, then the first below it.
   */
  private static boolean isNearer(KeyedRow candidate, KeyedRow earlier, KeyedRow row) {
    return time(candidate).isEqual(time(earlier))
        ? candidate.place().compareTo(row.place()) < 0
        : time(candidate).isAfter(time(earlier));
  }

  /** Sets rows of one key aside; a row that is dated later is in no conflict yet. */
  private void findConflict(List<KeyedRow> rows) {
    var standing = rows.stream().filter(this::isEffective).toList();
    if (!areEqual(standing)) {
      standing.forEach(row -> conflicts.put(row.place(), conflict(row, standing)));
      standing.forEach(row -> dispositions.put(row.place(), RowDisposition.SET_ASIDE));
    }
  }

  private static Notice conflict(KeyedRow row, List<KeyedRow> rows) {
    var others = rows.stream().filter(r -> r != row).toList();
    var named = others.stream().limit(MOST_NAMED).map(r -> difference(row, r)).toList();
    Value list = new Value.Phrases(named, ", ");
    var notice =
        row.read().ticket().isEmpty()
            ? Notice.of(NoticeCode.TICKET_CONFLICT, "NO_TICKET")
            : Notice.of(NoticeCode.TICKET_CONFLICT);
    return row.read()
        .about(notice)
        .with("first", rows.get(0).place().toString())
        .with(
            "others",
            others.size() > MOST_NAMED ? Phrase.of("LIST.MORE").with("named", list) : list);
  }

  /** The cells of another row that differ from this row's. */
  private static Phrase difference(KeyedRow row, KeyedRow other) {
    var differences =
        Stream.of(Field.values())
            .filter(field -> !NOT_NAMED.contains(field))
            .filter(field -> !row.read().row().get(field).equals(other.read().row().get(field)))
            .map(field -> cell(field, other.read().row()))
            .toList();
    return Phrase.of("CONFLICT.ROW")
        .with("place", other.place().toString())
        .with("cells", new Value.Phrases(differences, ", "));
  }

  private static Phrase cell(Field field, ExportRow row) {
    return Phrase.of(row.get(field).isEmpty() ? "CONFLICT.BLANK" : "CONFLICT.CELL")
        .with("column", field.id())
        .with("cell", row.quoted(field));
  }
}
