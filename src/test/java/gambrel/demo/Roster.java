package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** Who stands at which scale. */
final class Roster {
  private static final List<String> FLOOR = List.of("Wyn", "Dario");
  private static final List<String> BENCH = List.of("Tess", "Noor");
  private static final List<String> BLOCK = List.of("Dario", "Noor", "Wyn");

  private static final List<String> BONERS = List.of("Wyn", "Dario");

  private Roster() {}

  /** The first name of the boner, the same for a whole day. */
  static String boner(LocalDate day) {
    return BONERS.get(day.getDayOfYear() / 2 % BONERS.size());
  }

  /** The first name of the operator, the same for a whole day. */
  static String on(String scale, LocalDateTime time) {
    int day = time.getDayOfYear();
    var names = scale.equals("rail") ? FLOOR : scale.equals("bench1") ? BENCH : BLOCK;
    return names.get(day % names.size());
  }
}
