package gambrel.outside;

import gambrel.scenes.Found;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One suggestion of {@code causes.csv}: the rows of a body with the same rank.
 *
 * @param body for which it is suggested
 * @param rank 1 is the best
 * @param cause the cause
 * @param field what to correct, or empty
 * @param values the value by scale and ticket; empty where there is nothing to paste
 */
record Suggestion(String body, int rank, String cause, String field, Map<String, String> values) {

  /** All suggestions of a night. */
  static List<Suggestion> of(Found found) {
    var all = new LinkedHashMap<String, Suggestion>();
    for (var row : found.rows("causes")) {
      int rank = Integer.parseInt(row.get("rank"));
      var suggestion =
          all.computeIfAbsent(
              row.get("body") + ' ' + rank,
              key ->
                  new Suggestion(
                      row.get("body"),
                      rank,
                      row.get("cause"),
                      row.get("field"),
                      new LinkedHashMap<>()));
      for (var ticket : tickets(row.get("ticket"))) {
        suggestion.values().put(row.get("scale") + '/' + ticket, row.get("value"));
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
      var value = values.get(ticket.key());
      if (value == null) {
        changed.add(ticket);
      } else if (!field.equals("status")) {
        changed.add(corrected(room, ticket, value));
      }
    }
    return changed;
  }

  private Ticket corrected(Room room, Ticket ticket, String value) {
    var copy = ticket.copy();
    switch (field) {
      case "body" -> copy.body = value;
      case "batch" -> copy.batch = value;
      case "net" -> copy.net = thousandths(value);
      case "unit" -> copy.net = Math.round(ticket.net * (room.plan.pounds() ? POUNDS : 1 / POUNDS));
      default -> {}
    }
    return copy;
  }

  /** Pounds in a kilogram. */
  static final double POUNDS = 1 / 0.45359237;

  /** A weight as thousandths of its unit. */
  static long thousandths(String value) {
    return Math.round(Double.parseDouble(value) * 1_000);
  }
}
