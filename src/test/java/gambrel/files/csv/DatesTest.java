package gambrel.files.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates and moments as cells write them. */
class DatesTest {
  private static final ZoneId SYDNEY = ZoneId.of("Australia/Sydney");
  private final Dates iso = new Dates(Optional.empty(), SYDNEY);
  private final Dates own =
      new Dates(Optional.of(Dates.formatter("dd/MM/yyyy", Locale.UK)), SYDNEY);

  @ParameterizedTest
  @CsvSource({
    "2026-07-01T14:30:05, 2026-07-01T14:30:05+10:00",
    "2026-07-01T14:30, 2026-07-01T14:30+10:00",
    "2026-07-01 14:30, 2026-07-01T14:30+10:00",
    "2026-07-01 9:30, 2026-07-01T09:30+10:00",
    "2026-07-01T14:30:05.250, 2026-07-01T14:30:05.250+10:00",
    "2026-07-01T14:30Z, 2026-07-01T14:30Z",
    "2026-07-01T14:30:00+08:00, 2026-07-01T14:30+08:00",
    "2026-07-01T14:30 -0500, 2026-07-01T14:30-05:00",
    "2026-07-01, 2026-07-01T00:00+10:00",
    "01/07/2026, 2026-07-01T00:00+10:00",
    "01/07/2026 14:30, 2026-07-01T14:30+10:00",
    "01/07/2026 14:30:05, 2026-07-01T14:30:05+10:00",
  })
  void aMomentIsLocalUnlessItCarriesAnOffset(String text, String moment) {
    assertEquals(OffsetDateTime.parse(moment), own.moment(text));
  }

  @Test
  void aDateAloneEndsWithItsDayWhereAnEndIsMeant() {
    assertEquals(
        OffsetDateTime.parse("2026-07-01T23:59:59.999999999+10:00"), iso.lastMoment("2026-07-01"));
    assertEquals(
        OffsetDateTime.parse("2026-07-01T10:00+10:00"), iso.lastMoment("2026-07-01T10:00"));
  }

  @Test
  void aSpanOverTheRepeatedHourHoldsBothOfThem() {
    // On 5 April 2026 Sydney's clocks go from 03:00 daylight time back to 02:00.
    assertEquals(OffsetDateTime.parse("2026-04-05T02:30+11:00"), iso.moment("2026-04-05T02:30"));
    assertEquals(
        OffsetDateTime.parse("2026-04-05T02:30+10:00"), iso.lastMoment("2026-04-05T02:30"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-02-29",
        "31/04/2026",
        "1/4/2026",
        "2026-7-1",
        "0206-07-01",
        "2026-07-01T10:00",
        "soon"
      })
  void whatIsNoDateIsRefused(String text) {
    assertThrows(BadCell.class, () -> own.date(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-07-01T25:00", "2026-07-01T10", "10:00", "2026-07-01T10:00+99:00"})
  void whatIsNoMomentIsRefused(String text) {
    assertThrows(BadCell.class, () -> own.moment(text));
  }

  @Test
  void monthNamesAndTwoDigitYearsFollowThePattern() {
    var words = new Dates(Optional.of(Dates.formatter("d MMM yy", Locale.UK)), SYDNEY);
    assertEquals(LocalDate.of(2026, 7, 1), words.date("1 jul 26"));
    assertEquals(OffsetDateTime.parse("2026-07-01T09:05+10:00"), words.moment("1 Jul 26 09:05"));
  }
}
