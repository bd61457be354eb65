package gambrel.insight.cause;

import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;

/**
 * One scale's day.
 *
 * @param scale the scale's id
 * @param date the local date
 */
record ScaleDay(String scale, LocalDate date) {
  static ScaleDay of(Weighing weighing) {
    return new ScaleDay(weighing.scale().id(), weighing.date());
  }
}
