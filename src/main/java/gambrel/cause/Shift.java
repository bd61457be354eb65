package gambrel.cause;

import gambrel.weighing.Weighing;
import java.time.LocalDate;

/**
 * One scale's day.
 *
 * @param scale the scale's id
 * @param date the local date
 */
record Shift(String scale, LocalDate date) {
  static Shift of(Weighing weighing) {
    return new Shift(weighing.scale().id(), weighing.date());
  }
}
