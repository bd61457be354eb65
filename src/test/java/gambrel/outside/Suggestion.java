package gambrel.outside;

import gambrel.scenes.Found;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One suggestion of {@code causes.csv}: the rows of a body with the same rank.
 *
 * @param body for which it is suggested
 * @param rank 1 is the best
 * @param cause the cause
 * @param values what to correct: by field, the value by scale and ticket; empty where there is
 *     nothing to paste
 */
record Suggestion(String body, int rank, String cause, Map<String, Map<String, String>> values) {

  /** All suggestions of a night. */
  static List<Suggestion> of(Found found) {
    var all = new LinkedHashMap<String, Suggestion>();
    for (var row : found.rows("causes")) {
      int rank = Integer.parseInt(row.get("rank"));
      var suggestion =
          all.computeIfAbsent(
              row.get("body") + ' ' + rank,
              key -> new Suggestion(row.get("body"), rank, row.get("cause"), new TreeMap<>()));
      for (var ticket : tickets(row.get("ticket"))) {
        suggestion
            .values()
            .computeIfAbsent(row.get("field"), f -> new LinkedHashMap<>())
            .put(row.get("scale") + '/' + ticket, row.get("value"));
      }
    }
    return List.copyOf(all.values());
  }

  /** The tickets of a cell: none, one, or a run. */
  private static List<String> tickets(String cell) {
    if (cell.isEmpty() || !cell.matches("\\d+-\\d+")) {
      return cell.isEmpty() ? List.of() : List.of(cell);
    }
    int from = Integer.parseInt(cell.substring(0, cell.indexOf('-')));
    int to = Integer.parseInt(cell.substring(cell.indexOf('-') + 1));
    var tickets = new ArrayList<String>();
    for (int ticket = from; ticket <= to; ticket++) {
      tickets.add(String.valueOf(ticket));
    }
    return tickets;
  }

  /** The weighings of a room with this suggestion's corrections laid over them. */
  List<Ticket> laidOver(Room room) {
    var changed = new ArrayList<Ticket>();
    for (var ticket : room.tickets) {
      if (!values.getOrDefault("status", Map.of()).containsKey(ticket.key())) {
        var copy = ticket.copy();
        values.forEach((field, byTicket) -> correct(room, copy, field, byTicket.get(copy.key())));
        changed.add(copy);
      }
    }
    return changed;
  }

  private static void correct(Room room, Ticket ticket, String field, String value) {
    if (value != null) {
      switch (field) {
        case "body" -> ticket.body = value;
        case "batch" -> ticket.batch = value;
        case "net" -> ticket.net = thousandths(value);
        case "unit" -> {
          double factor = room.plan.pounds() ? POUNDS : 1 / POUNDS;
          ticket.net = Math.round(ticket.net * factor);
        }
        default -> {}
      }
    }
  }

  /** Pounds in a kilogram. */
  static final double POUNDS = 1 / 0.45359237;

  /** A weight as thousandths of its unit. */
  static long thousandths(String value) {
    return Math.round(Double.parseDouble(value) * 1_000);
  }
}
