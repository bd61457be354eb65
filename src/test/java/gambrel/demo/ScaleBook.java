package gambrel.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** All that one scale weighed, exported as one file a day. */
final class ScaleBook {
  private final String scale;
  private final int division;
  private final int firstTicket;
  private final List<String> columns;
  private final List<Row> rows = new ArrayList<>();
  private final Map<LocalDate, Integer> overlaps = new TreeMap<>();

  /**
   * @param division in grams
   * @param columns after {@code scale}
   */
  ScaleBook(String scale, int division, int firstTicket, List<String> columns) {
    this.scale = scale;
    this.division = division;
    this.firstTicket = firstTicket;
    this.columns = columns;
  }

  /** Weighs so many grams net, to the scale's division. */
  Row weigh(LocalDateTime time, String code, long grams) {
    var row = new Row(time, code);
    row.net = shown(grams);
    return add(row);
  }

  /** Weighs a tub that is not tared on the scale. */
  Row weighGross(LocalDateTime time, String code, long grams) {
    var row = new Row(time, code);
    row.gross = shown(grams);
    return add(row);
  }

  Row add(Row row) {
    row.operator = row.operator.isEmpty() ? Roster.on(scale, row.time) : row.operator;
    rows.add(row);
    return row;
  }

  void remove(Row row) {
    rows.remove(row);
  }

  /** The weight as this scale shows it. */
  String shown(long grams) {
    long rounded = (grams + division / 2) / division * division;
    int decimals = division % 100 == 0 ? 1 : division % 10 == 0 ? 2 : 3;
    return BigDecimal.valueOf(rounded, 3).setScale(decimals).toPlainString();
  }

  /** Rows of a body in order of time. */
  List<Row> of(String body) {
    return rows.stream()
        .filter(r -> r.body.equals(body))
        .sorted(Comparator.comparing((Row r) -> r.time))
        .toList();
  }

  /** Lets the export of a day begin with the last rows of the day before, as some scales do. */
  void overlap(LocalDate day, int rowsOfDayBefore) {
    overlaps.put(day, rowsOfDayBefore);
  }

  /** Gives each row its running ticket number. */
  void number() {
    rows.sort(Comparator.comparing(r -> r.time));
    int ticket = firstTicket;
    for (var row : rows) {
      if (row.sharesTicketOf == null) {
        row.ticket = Integer.toString(ticket++);
      }
    }
    rows.stream()
        .filter(r -> r.sharesTicketOf != null)
        .forEach(r -> r.ticket = r.sharesTicketOf.ticket);
  }

  /** Where a numbered row stands in the exports: file and line, the header being line 1. */
  String place(Row row) {
    var day = row.time.toLocalDate();
    return path(day) + ":" + (days().get(day).indexOf(row) + 2);
  }

  /** The export files by path. */
  Map<String, String> files() {
    var files = new TreeMap<String, String>();
    days().forEach((day, ofDay) -> files.put(path(day), text(ofDay)));
    return files;
  }

  private String path(LocalDate day) {
    return "exports/" + scale + "/" + day + ".csv";
  }

  private SortedMap<LocalDate, List<Row>> days() {
    var days =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    r -> r.time.toLocalDate(), TreeMap::new, Collectors.toList()));
    overlaps.forEach(
        (day, count) -> {
          var before = days.get(days.headMap(day).lastKey());
          var repeated = before.subList(before.size() - count, before.size());
          days.get(day).addAll(0, List.copyOf(repeated));
        });
    return days;
  }

  /** The days on which something was weighed under a code. */
  List<LocalDate> days(String code) {
    return rows.stream()
        .filter(r -> r.code.equals(code))
        .map(r -> r.time.toLocalDate())
        .distinct()
        .toList();
  }

  private String text(List<Row> ofDay) {
    if (scale.equals("rail")) {
      return RailExport.text(ofDay);
    }
    var text = new StringBuilder("scale," + String.join(",", columns) + "\n");
    for (var row : ofDay) {
      text.append(scale);
      columns.forEach(column -> text.append(',').append(row.cell(column)));
      text.append('\n');
    }
    return text.toString();
  }
}
