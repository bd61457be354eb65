package gambrel.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** corrections.csv as it stands at a moment. */
final class Corrections {
  private static final Pattern RUN = Pattern.compile("(\\d+)-(\\d+)");
  private static final Pattern PLACE = Pattern.compile("(.+):(\\d+)");

  private final Setup setup;
  private final List<Csv.Line> lines = new ArrayList<>();

  Corrections(Setup setup, Instant asOf) {
    this.setup = setup;
    for (var line : setup.table("corrections")) {
      if (!setup.moment(line.get("on")).isAfter(asOf)) {
        lines.add(line);
      }
    }
    // Applied one after another, so that the latest has the last word.
    lines.sort(Comparator.comparing(line -> setup.moment(line.get("on"))));
  }

  /** Lays the corrections over a row's cells; true where they void it. */
  boolean apply(String file, int line, LocalDate date, Map<String, String> cells) {
    boolean struck = false;
    var scale = cells.getOrDefault("scale", "");
    var ticket = cells.getOrDefault("ticket", "");
    for (var correction : lines) {
      if (fits(correction, file, line, date, scale, ticket)) {
        cells.put(correction.get("field"), correction.get("value"));
        if (correction.get("field").equals("status")) {
          struck = correction.get("value").equals("void");
        }
      }
    }
    return struck;
  }

  private boolean fits(
      Csv.Line correction, String file, int line, LocalDate date, String scale, String ticket) {
    var wanted = correction.get("scale");
    var day = correction.get("date");
    return (wanted.isEmpty() || wanted.equals(scale))
        && (day.isEmpty() || setup.date(day).equals(date))
        && names(correction.get("ticket"), file, line, ticket);
  }

  /**
   * Whether a correction that cannot be read names a row.
   *
   * @param known whether its scale is one that there is
   */
  static boolean fits(Setup setup, Csv.Line line, Row row, boolean known) {
    var day = line.get("date");
    return (!known || line.get("scale").equals(row.cell("scale")))
        && (!setup.columns.isLegible("corrections", line, "date")
            || setup.date(day).equals(row.date))
        && names(line.get("ticket"), row.file, row.line, row.cell("ticket"));
  }

  private static boolean names(String cell, String file, int line, String ticket) {
    var place = PLACE.matcher(cell);
    if (place.matches()) {
      return place.group(1).equals(file) && Integer.parseInt(place.group(2)) == line;
    }
    var run = RUN.matcher(cell);
    if (run.matches() && ticket.matches("\\d+")) {
      long number = Long.parseLong(ticket);
      return Long.parseLong(run.group(1)) <= number && number <= Long.parseLong(run.group(2));
    }
    return cell.equals(ticket);
  }
}
