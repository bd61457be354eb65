package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Correction;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Applies corrections to rows. If several correct one field of a row, the one decided last counts;
 * of those decided at one moment, the last in the file.
 */
final class CorrectionOverlay {
  private static final Pattern RUN = Pattern.compile("(\\d+)-(\\d+)");
  private static final Pattern ONE_ROW = Pattern.compile("(.+):(\\d+)");
  private static final Comparator<Correction> BY_DECISION =
      Comparator.comparing(Correction::on, OffsetDateTime.timeLineOrder());

  private final ExportTimes times;
  private final Map<String, List<Correction>> byTicket = new HashMap<>();
  private final Map<String, List<Correction>> byRow = new HashMap<>();
  private final Map<String, List<Correction>> runs = new HashMap<>();
  private final Map<Correction, Boolean> used = new LinkedHashMap<>();
  private final List<CorrectedRows.AppliedCorrection> applied = new ArrayList<>();
  private final Set<Place> removed = new HashSet<>();

  /** Takes the corrections that were decided by {@code asOf}. */
  CorrectionOverlay(List<Correction> corrections, ExportTimes times, OffsetDateTime asOf) {
    this.times = times;
    corrections.stream()
        .filter(c -> !c.on().isAfter(asOf))
        .sorted(BY_DECISION)
        .forEach(this::index);
  }

  private void index(Correction correction) {
    used.put(correction, false);
    String ticket = correction.ticket();
    if (ONE_ROW.matcher(ticket).matches()) {
      add(byRow, ticket, correction);
    }
    if (RUN.matcher(ticket).matches()) {
      add(runs, correction.scale(), correction);
    }
    add(byTicket, Tickets.key(correction.scale(), ticket), correction);
  }

  private static void add(Map<String, List<Correction>> index, String key, Correction correction) {
    index.computeIfAbsent(key, k -> new ArrayList<>()).add(correction);
  }

  /**
   * The row with every correction that fits it; rows come in file and line order, each once. The
   * status cell of a row that a correction removes stays as it was.
   */
  ExportRow apply(ExportRow row) {
    var corrected = row;
    for (var correction : fitting(row)) {
      used.put(correction, true);
      var field = Field.of(correction.field()).orElseThrow();
      applied.add(new CorrectedRows.AppliedCorrection(row, corrected.get(field), correction));
      if (field == Field.STATUS) {
        removed.remove(row.place());
      }
      if (field == Field.STATUS && correction.value().equalsIgnoreCase("void")) {
        removed.add(row.place());
      } else {
        corrected = corrected.with(field, correction.value());
      }
    }
    return corrected;
  }

  /** The places of rows that a correction removes. */
  Set<Place> removed() {
    return removed;
  }

  private List<Correction> fitting(ExportRow row) {
    if (used.isEmpty()) {
      return List.of();
    }
    var found = new ArrayList<>(byRow.getOrDefault(row.place().toString(), List.of()));
    String scale = row.get(Field.SCALE);
    String ticket = row.get(Field.TICKET);
    if (!ticket.isEmpty()) {
      found.addAll(byTicket.getOrDefault(Tickets.key(scale, ticket), List.of()));
      runs.getOrDefault(scale, List.of()).stream()
          .filter(c -> inRun(c.ticket(), ticket))
          .forEach(found::add);
    }
    if (found.isEmpty()) {
      return found;
    }
    Optional<LocalDate> date = times.read(row.get(Field.TIME)).map(OffsetDateTime::toLocalDate);
    found.removeIf(c -> c.date().isPresent() && !c.date().equals(date));
    found.sort(BY_DECISION.thenComparing(Correction::place));
    return found;
  }

  /** Whether a ticket lies in a run {@code FIRST-LAST}. */
  static boolean inRun(String run, String ticket) {
    var ends = RUN.matcher(run);
    return ends.matches()
        && Tickets.isNumber(ticket)
        && Tickets.compare(ticket, ends.group(1)) >= 0
        && Tickets.compare(ticket, ends.group(2)) <= 0;
  }

  /** Every correction that was applied, row by row. */
  List<CorrectedRows.AppliedCorrection> applied() {
    return applied;
  }

  /** A notice for every correction that fitted no row. */
  List<Notice> unused() {
    return used.keySet().stream()
        .filter(correction -> !used.get(correction))
        .map(CorrectionOverlay::unused)
        .toList();
  }

  private static Notice unused(Correction correction) {
    var notice =
        correction
            .date()
            .map(
                date ->
                    Notice.of(NoticeCode.CORRECTION_UNUSED, "ON_DATE", correction.place())
                        .with("date", date))
            .orElseGet(() -> Notice.of(NoticeCode.CORRECTION_UNUSED, correction.place()));
    return notice.aboutTicket(correction.scale(), correction.ticket());
  }
}
