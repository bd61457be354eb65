package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Shop;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Lays corrections over rows. Of several for one field of a row the latest {@code on} stands, then
 * the last in the file.
 */
final class CorrectionOverlay {
  private static final Pattern RUN = Pattern.compile("(\\d+)-(\\d+)");
  private static final Pattern ONE_ROW = Pattern.compile("(.+):(\\d+)");

  private final ExportTimes times;
  private final Map<String, List<Correction>> byTicket = new HashMap<>();
  private final Map<String, List<Correction>> byRow = new HashMap<>();
  private final Map<String, List<Correction>> runs = new HashMap<>();
  private final Map<Correction, Boolean> used = new LinkedHashMap<>();
  private final List<AppliedCorrection> applied = new ArrayList<>();

  CorrectionOverlay(Shop shop, OffsetDateTime asOf) {
    times = new ExportTimes(shop.settings().zone());
    shop.corrections().stream()
        .filter(c -> !c.on().isAfter(asOf))
        .sorted(Comparator.comparing(Correction::on, OffsetDateTime.timeLineOrder()))
        .forEach(this::index);
  }

  private void index(Correction correction) {
    used.put(correction, false);
    String ticket = correction.ticket();
    var row = ONE_ROW.matcher(ticket);
    if (row.matches()) {
      add(byRow, row.group(1) + ':' + row.group(2), correction);
    }
    if (RUN.matcher(ticket).matches()) {
      add(runs, correction.scale(), correction);
    }
    add(byTicket, key(correction.scale(), ticket), correction);
  }

  private static void add(Map<String, List<Correction>> index, String key, Correction correction) {
    index.computeIfAbsent(key, k -> new ArrayList<>()).add(correction);
  }

  private static String key(String scale, String ticket) {
    return scale + '\n' + IdIndex.withoutZeros(ticket);
  }

  /** A row after its corrections. */
  record Corrected(ExportRow row, boolean removed) {}

  /** A row with what fits it laid over; rows are given in file and line order, each once. */
  Corrected apply(ExportRow row) {
    var corrected = row;
    boolean removed = false;
    for (var correction : fitting(row)) {
      used.put(correction, true);
      var was = corrected.get(Field.of(correction.field()).orElseThrow());
      applied.add(new AppliedCorrection(row, was, correction));
      if (correction.field().equals(Field.STATUS.id())) {
        removed = correction.value().equalsIgnoreCase("void");
        corrected = removed ? corrected : corrected.with(Field.STATUS, correction.value());
      } else {
        corrected = corrected.with(Field.of(correction.field()).orElseThrow(), correction.value());
      }
    }
    return new Corrected(corrected, removed);
  }

  private List<Correction> fitting(ExportRow row) {
    if (used.isEmpty()) {
      return List.of();
    }
    var found = new ArrayList<>(byRow.getOrDefault(row.place().toString(), List.of()));
    String scale = row.get(Field.SCALE);
    String ticket = row.get(Field.TICKET);
    if (!ticket.isEmpty()) {
      found.addAll(byTicket.getOrDefault(key(scale, ticket), List.of()));
      runs.getOrDefault(scale, List.of()).stream()
          .filter(c -> inRun(c.ticket(), ticket))
          .forEach(found::add);
    }
    if (found.isEmpty()) {
      return found;
    }
    Optional<LocalDate> date = times.read(row.get(Field.TIME)).map(OffsetDateTime::toLocalDate);
    found.removeIf(c -> c.date().isPresent() && !c.date().equals(date));
    found.sort(
        Comparator.comparing(Correction::on, OffsetDateTime.timeLineOrder())
            .thenComparing(Correction::place));
    return found;
  }

  /** All that was laid over rows, row by row. */
  List<AppliedCorrection> applied() {
    return applied;
  }

  private static boolean inRun(String run, String ticket) {
    var ends = RUN.matcher(run);
    if (!ends.matches() || !ticket.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return false;
    }
    var number = new BigInteger(ticket);
    return number.compareTo(new BigInteger(ends.group(1))) >= 0
        && number.compareTo(new BigInteger(ends.group(2))) <= 0;
  }

  /** A notice for every correction that fitted nothing. */
  List<Notice> unused() {
    return used.entrySet().stream()
        .filter(entry -> !entry.getValue())
        .map(entry -> entry.getKey())
        .map(
            c ->
                c.date()
                    .map(
                        date ->
                            Notice.of(NoticeCode.CORRECTION_UNUSED, "ON_DATE", c.place())
                                .with("date", date))
                    .orElseGet(() -> Notice.of(NoticeCode.CORRECTION_UNUSED, c.place()))
                    .aboutTicket(c.scale(), c.ticket()))
        .toList();
  }
}
