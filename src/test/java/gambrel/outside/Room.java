package gambrel.outside;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A boning room: who owned what, what was weighed, and what a reader of it can add up. */
final class Room {
  /**
   * A batch.
   *
   * @param id as keyed
   * @param product its name
   * @param made the day
   */
  record Batch(String id, String product, LocalDate made) {}

  /**
   * Who bones at a scale in some time.
   *
   * @param scale the scale
   * @param from the first moment
   * @param to the last moment
   * @param boner the name
   */
  record Boning(String scale, LocalDateTime from, LocalDateTime to, String boner) {}

  /** What kind of room it is. */
  final RoomPlan plan;

  /** Its bodies in the order of their kill. */
  final List<Carcase> carcases = new ArrayList<>();

  /** Live weights in thousandths of the shop's unit, by body. */
  final Map<String, Long> live = new HashMap<>();

  /** Its weighings. */
  final List<Ticket> tickets = new ArrayList<>();

  /** Its batches, by id. */
  final Map<String, Batch> batches = new LinkedHashMap<>();

  /** Who boned when. */
  final List<Boning> bonings = new ArrayList<>();

  /** Lines of {@code values.csv}. */
  final List<String> values = new ArrayList<>();

  /** Lines of {@code payments.csv}. */
  final List<String> payments = new ArrayList<>();

  /** The bodies of each day and species in the order in which they are cut. */
  final Map<String, List<Carcase>> order = new TreeMap<>();

  Room(RoomPlan plan) {
    this.plan = plan;
  }

  /** The body with an id. */
  Carcase carcase(String body) {
    return carcases.stream().filter(c -> c.id().equals(body)).findFirst().orElseThrow();
  }

  /** The bodies of its species that are cut just before and just after a body. */
  List<Carcase> neighbours(Carcase carcase) {
    var day = order.get(day(carcase));
    int place = day.indexOf(carcase);
    var neighbours = new ArrayList<Carcase>();
    if (place > 0) {
      neighbours.add(day.get(place - 1));
    }
    if (place < day.size() - 1) {
      neighbours.add(day.get(place + 1));
    }
    return neighbours;
  }

  /** The key of a body's day and species in {@code order}. */
  static String day(Carcase carcase) {
    return carcase.cut() + " " + carcase.species() + " " + carcase.bench();
  }

  /** The weighings keyed to a body. */
  List<Ticket> of(String body) {
    return tickets.stream().filter(ticket -> ticket.body.equals(body)).toList();
  }

  /** The moment after which all that was cut is finished. */
  LocalDateTime finished() {
    var last = tickets.stream().map(t -> t.time).max(LocalDateTime::compareTo).orElseThrow();
    return last.toLocalDate().plusDays(6).atTime(2, 0);
  }

  /** The weight into the boning room of every body: the last rail step's weights. */
  Map<String, Long> boning() {
    return boning(tickets);
  }

  private static Map<String, Long> boning(List<Ticket> tickets) {
    var steps = new HashMap<String, Map<String, Long>>();
    tickets.stream()
        .filter(Ticket::isRail)
        .forEach(
            t ->
                steps
                    .computeIfAbsent(t.body, b -> new HashMap<>())
                    .merge(t.step, t.net, Long::sum));
    var boning = new HashMap<String, Long>();
    steps.forEach(
        (body, weights) ->
            boning.put(
                body,
                weights.getOrDefault(
                    "aged", weights.getOrDefault("cold", weights.getOrDefault("hot", 0L)))));
    return boning;
  }

  /** The bench loss of every body in thousandths of the unit. */
  Map<String, Long> losses() {
    return losses(tickets);
  }

  private static Map<String, Long> losses(List<Ticket> tickets) {
    var losses = boning(tickets);
    tickets.stream()
        .filter(t -> !t.isOffal() && !t.body.isEmpty())
        .filter(
            t ->
                t.step.equals("bin")
                    || t.step.equals("pack") && t.batch.isEmpty()
                    || t.step.equals("tub") && !t.batch.isEmpty())
        .forEach(t -> losses.merge(t.body, -t.net, Long::sum));
    return losses;
  }

  /** The bench loss of every body in per cent, given these weighings. */
  static Map<String, Double> lossPercent(List<Ticket> tickets) {
    var boning = boning(tickets);
    var percent = new TreeMap<String, Double>();
    losses(tickets)
        .forEach(
            (body, loss) ->
                percent.put(body, 100.0 * loss / Math.max(1, boning.getOrDefault(body, 0L))));
    return percent;
  }

  /** The loss of every batch in per cent of what went in, given these weighings. */
  static Map<String, Double> batchPercent(List<Ticket> tickets) {
    var in = new TreeMap<String, Long>();
    var out = new HashMap<String, Long>();
    for (var t : tickets) {
      if (!t.batch.isEmpty()) {
        (t.step.equals("pack") ? out : in).merge(t.batch, t.net, Long::sum);
      }
    }
    var percent = new TreeMap<String, Double>();
    in.forEach((id, sum) -> percent.put(id, 100.0 * (sum - out.getOrDefault(id, 0L)) / sum));
    return percent;
  }
}
