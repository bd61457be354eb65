package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;

/** A working day at one place: time passes from weighing to weighing, not through the breaks. */
final class Shift {
  private static final LocalTime SMOKO = LocalTime.of(9, 30);
  private static final LocalTime LUNCH = LocalTime.of(12, 15);

  private LocalDateTime now;

  Shift(LocalDate day, LocalTime start) {
    now = day.atTime(start);
  }

  /** The moment so many seconds later. */
  LocalDateTime after(int seconds) {
    now = pause(pause(now.plusSeconds(seconds), SMOKO, 20), LUNCH, 30);
    return now;
  }

  private static LocalDateTime pause(LocalDateTime time, LocalTime start, int minutes) {
    var from = time.toLocalDate().atTime(start);
    boolean within = !time.isBefore(from) && time.isBefore(from.plusMinutes(minutes));
    return within ? time.plusMinutes(minutes) : time;
  }
}
