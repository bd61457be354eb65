package gambrel.trade.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExportTimesTest {
  private static final ExportTimes TIMES = new ExportTimes(ZoneId.of("Australia/Sydney"));

  private static final DateTimeFormatter JDK =
      DateTimeFormatter.ISO_LOCAL_DATE_TIME.withResolverStyle(ResolverStyle.STRICT);

  private static Optional<LocalDateTime> jdk(String text) {
    try {
      return Optional.of(LocalDateTime.parse(text.replace(' ', 'T'), JDK));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2026-07-31T14:05, 2026-07-31T14:05:00",
    "2026-07-31 14:05:59, 2026-07-31T14:05:59",
    "2024-02-29T00:00, 2024-02-29T00:00:00"
  })
  void isRead(String text, LocalDateTime time) {
    assertEquals(Optional.of(time), TIMES.local(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "2026-02-29T10:00",
        "2026-13-01T10:00",
        "2026-07-31T24:00",
        "2026-07-31T10:60",
        "2026-07-31T10:00:60",
        "2026-07-31T10:00Z",
        "31.07.2026 10:00",
        "2026-07-31T1O:00"
      })
  void isNoLocalTimeIfItIsAnythingElse(String text) {
    assertEquals(Optional.empty(), TIMES.local(text));
  }

  @Test
  void meansWhatTheJdkTakesItFor() {
    var dice = new SplittableRandom(7);
    for (int i = 0; i < 20_000; i++) {
      String text =
          "%04d-%02d-%02dT%02d:%02d:%02d"
              .formatted(
                  1900 + dice.nextInt(300),
                  dice.nextInt(14),
                  dice.nextInt(33),
                  dice.nextInt(25),
                  dice.nextInt(61),
                  dice.nextInt(61));
      assertEquals(jdk(text), TIMES.local(text), text);
    }
  }
}
