package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The form in which the demo's rail scale exports, which needs a layout: a head, semicolons,
 * decimal commas, a word of its own for a weighing that counts.
 */
public final class RailExport {
  /** The layout that reads it. */
  static final String LAYOUT =
      """
      # The rail scale prints a report: two lines of head, then a table of its own.
      delimiter=;
      skip=3
      decimal=,
      column.ticket=No
      column.date=Date
      date=d.M.yyyy
      column.clock=Time
      clock=H:mm:ss
      column.body=Carcase
      column.code=Key
      column.net=Net kg
      unit=kg
      column.operator=Hand
      column.status=State
      value.status.good=ok
      """;

  private static final String HEAD =
      """
      RAIL REPORT
      Weighed on the rail of the slaughter hall

      No;Date;Time;Carcase;Key;Net kg;Hand;State
      """;

  private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("dd.MM.yyyy");
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");

  private RailExport() {}

  /** The export of a day. */
  static String text(List<Row> ofDay) {
    return ofDay.stream().map(RailExport::line).collect(Collectors.joining("", HEAD, ""));
  }

  private static String line(Row row) {
    return String.join(
            ";",
            row.ticket,
            row.time.format(DATE),
            row.time.format(TIME),
            row.body,
            row.code,
            row.net.replace('.', ','),
            row.operator,
            row.cell("status").isEmpty() ? "good" : row.cell("status"))
        + '\n';
  }

  /** The same rows as an export that needs no layout. */
  public static String plain(String text) {
    return text.substring(HEAD.length())
        .lines()
        .map(line -> plain(line.split(";", -1)))
        .collect(
            Collectors.joining("\n", "scale,ticket,time,body,code,net,operator,status\n", "\n"));
  }

  private static String plain(String[] cells) {
    return String.join(
        ",",
        "rail",
        cells[0],
        LocalDate.parse(cells[1], DATE) + "T" + LocalTime.parse(cells[2]).format(TIME),
        cells[3],
        cells[4],
        cells[5].replace(',', '.'),
        cells[6],
        cells[7].equals("good") ? "" : cells[7]);
  }
}
