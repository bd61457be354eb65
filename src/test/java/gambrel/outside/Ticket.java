package gambrel.outside;

import java.time.LocalDateTime;

/** One weighing as the scale wrote it. Weights are thousandths of the shop's unit. */
final class Ticket {
  /** The scale. */
  String scale;

  /** Number of the ticket. */
  int number;

  /** When it was weighed. */
  LocalDateTime time;

  /** The body as keyed, or empty. */
  String body;

  /** The step of its code. */
  String step;

  /** The item of its code. */
  String item;

  /** What was on the scale, without the tare that was keyed. */
  long net;

  /** The tare that was keyed. */
  long tare;

  /** The batch as keyed, or empty. */
  String batch;

  Ticket(String scale, LocalDateTime time, String body, String step, String item, long net) {
    this.scale = scale;
    this.time = time;
    this.body = body;
    this.step = step;
    this.item = item;
    this.net = net;
    this.batch = "";
  }

  /** Another ticket that says the same. */
  Ticket copy() {
    var copy = new Ticket(scale, time, body, step, item, net);
    copy.number = number;
    copy.tare = tare;
    copy.batch = batch;
    return copy;
  }

  /** Scale and number. */
  String key() {
    return scale + '/' + number;
  }

  /** Whether it is weighed on the rail. */
  boolean isRail() {
    return step.equals("hot") || step.equals("cold") || step.equals("aged");
  }

  /** Whether it is offal, which no balance counts. */
  boolean isOffal() {
    return item.equals("liver");
  }

  @Override
  public String toString() {
    return key() + ' ' + time + ' ' + body + ' ' + step + ' ' + item + ' ' + net + ' ' + batch;
  }
}
