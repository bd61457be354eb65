package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.scenes.Scene;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop that hangs a week: of 24 bodies before March two hung 5 days and two 9, the rest 7. */
class LeftHangingTest {
  private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);

  @TempDir Path folder;

  private Scene scene;

  @BeforeEach
  void hangAWeek() {
    scene = Books.shop(folder);
    for (int i = 0; i < 24; i++) {
      hang("B" + i, "ann", MARCH.minusDays(40 - i), i < 2 ? 5 : i < 4 ? 9 : 7);
    }
  }

  /** 100 kg of cold weight lose 0.3 kg a day. */
  private void hang(String id, String owner, LocalDate killed, int days) {
    scene.body("%s,beef,steer,%s,%s,,,,,,".formatted(id, killed, owner));
    weigh(killed, id, "hot carcase", 102);
    weigh(killed.plusDays(1), id, "cold carcase", 100);
    weigh(killed.plusDays(days), id, "aged carcase", 100 - 0.3 * days);
    weigh(killed.plusDays(days), id, "pack mince", 99 - 0.3 * days);
  }

  private void weigh(LocalDate day, String id, String what, double weight) {
    scene.weigh("%sT10:00 %s %s %s".formatted(day, id, what, text(weight)));
  }

  private static String text(double weight) {
    return String.format(Locale.ROOT, "%.2f", weight);
  }

  private List<Finding> found() {
    return MonthReport.of(Books.march(scene)).findings().stream()
        .filter(f -> f.kind() == Finding.Kind.HANGING)
        .toList();
  }

  /**
   * Most hung 7 days, so that the spread is zero and counts as a day. The median absolute deviation
   * of 24 is worth 0.37 · 23 = 8 degrees of freedom; t(8) is exceeded with probability 0.0005 from
   * 5.04 on by the printed tables, with 0.00025 from 5.62 on: the limit lies above 12 days, and for
   * two bodies below 13.
   */
  @Test
  void beyondTheLimitAndNotADayLate() {
    hang("D12", "shop", MARCH, 12);
    assertEquals(List.of(), found());
    hang("D14", "shop", MARCH, 14);
    assertEquals(List.of("D14"), found().get(0).subjects());
  }

  @Test
  void butACustomersBodyIsTheCustomersChoice() {
    hang("D30", "ann", MARCH, 30);
    assertEquals(List.of(), found());
  }

  /** Seven days over the usual seven: 2.1 kg of 100. */
  @Test
  void andToldWithTheDaysOverTheUsualOnesAndWhatTheyCost() {
    hang("D14", "shop", MARCH, 14);
    var evidence = found().get(0).evidence();
    assertEquals("Number[value=7, decimals=0]", evidence.get("usual").toString());
    assertEquals("Number[value=7, decimals=0]", evidence.get("days").toString());
    assertEquals("2.100", ((Evidence.Mass) evidence.get("weight")).value().toString());
  }
}
