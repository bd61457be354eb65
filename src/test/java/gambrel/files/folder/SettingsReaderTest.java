package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Settings.Paper;
import gambrel.trade.shop.Settings.Terms;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Month;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code shop.properties} says. */
class SettingsReaderTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void startFromFourSettings() {
    files = new ShopFiles(folder);
  }

  private Settings with(String more) {
    return files.with("shop.properties", ShopFiles.SETTINGS + more).clean().settings();
  }

  @Test
  void yearReviewsAreMonthsByNumberOrAllOrNone() {
    assertEquals(Set.of(Month.JUNE, Month.DECEMBER), with("year_review=6, 12\n").yearReviews());
    assertEquals(12, with("year_review=all\n").yearReviews().size());
    assertEquals(Set.of(), with("year_review=\n").yearReviews());
  }

  @Test
  void statementsSayHowTheyAreNumberedAndPaid() {
    var set =
        with(
            """
            tax_number=12 345 678 901
            tax_number_name=ABN
            number_from=1001
            pay_by_days=14
            pay_to=Bank 012-345;Account 6789
            """);
    assertEquals(
        new Terms("12 345 678 901", "ABN", 1001, Optional.of(14), "Bank 012-345;Account 6789"),
        set.terms());
    assertEquals(new Terms("", "", 1, Optional.empty(), ""), with("").terms());
  }

  @Test
  void fourSettingsAreEnoughAndTheRestHasDefaults() {
    var settings = with("");
    assertEquals("Hollow Lane Meats", settings.name());
    assertEquals(Currency.getInstance("AUD"), settings.currency());
    assertEquals(WeightUnit.KG, settings.unit());
    assertEquals(ZoneId.of("Australia/Sydney"), settings.zone());
    assertEquals(Locale.forLanguageTag("en-AU"), settings.locale());
    assertEquals("en", settings.language());
    assertEquals(Region.AU, settings.region());
    assertEquals(Paper.A4, settings.paper());
    assertEquals(Bins.WEIGHED, settings.bins());
    assertEquals(6, settings.quietHours());
    assertEquals(4, settings.cuttingDays());
    assertEquals(Set.of(Month.DECEMBER), settings.yearReviews());
    assertEquals(Set.of(Step.HOT, Step.COLD), settings.railOf(Species.BEEF));
    assertEquals(Optional.empty(), settings.templates());
  }

  @Test
  void limitsHaveTheDefaultsOfTheContract() {
    var limits = with("").limits();
    assertEquals(new BigDecimal("3.0"), limits.cuttingLossPercent());
    assertEquals(new BigDecimal("0.4"), limits.hangingPercentPerDay());
    assertEquals(new BigDecimal("8.0"), limits.batchLossPercent());
    assertEquals(42, limits.daysHung());
    assertEquals(5, limits.revisions());
  }

  @Test
  void aByteOrderMarkAndAccentsAreReadAsUtf8() {
    var text = "\uFEFF" + ShopFiles.SETTINGS.replace("Hollow Lane Meats", "Bœuf à l’Étal");
    files.with("shop.properties", text.getBytes(StandardCharsets.UTF_8));
    assertEquals("Bœuf à l’Étal", files.clean().settings().name());
  }

  @ParameterizedTest
  @CsvSource({"au,en-AU,A4", "uk,en-GB,A4", "us,en-US,LETTER"})
  void localeAndPaperFollowTheRegion(String region, String locale, Paper paper) {
    var settings = with("region=" + region);
    assertEquals(Locale.forLanguageTag(locale), settings.locale());
    assertEquals(paper, settings.paper());
  }

  @ParameterizedTest
  @CsvSource({"en-GB,UK", "en_US,US", "en-NZ,AU"})
  void theRegionFollowsAGivenLocale(String locale, Region region) {
    assertEquals(region, with("locale=" + locale).region());
  }

  @Test
  void railIsTakenBySpeciesAndABlankRailTakesNone() {
    var settings = with("rail=hot, cold\nrail.lamb=hot\nrail.game=\n");
    assertEquals(Set.of(Step.HOT, Step.COLD), settings.railOf(Species.BEEF));
    assertEquals(Set.of(Step.HOT), settings.railOf(Species.LAMB));
    assertEquals(Set.of(), settings.railOf(Species.GAME));
    assertEquals(Set.of(), with("rail=\n").railOf(Species.BEEF));
  }

  @ParameterizedTest
  @ValueSource(strings = {"name", "currency", "unit", "zone"})
  void withoutARequiredSettingThereIsNoShop(String key) {
    var text = ShopFiles.SETTINGS.replaceAll("(?m)^" + key + "=.*$", "");
    files.with("shop.properties", text);
    assertEquals("shop.properties lacks the setting " + key, files.whyUnreadable());
  }

  @Test
  void allThatIsMissingOrWrongIsToldAtOnce() {
    files.with("shop.properties", "name=Hollow Lane Meats\nunit=stone\n");
    assertEquals(
        "shop.properties lacks the settings currency, zone; shop.properties: unit \"stone\" is"
            + " neither kg nor lb",
        files.whyUnreadable());
  }

  @ParameterizedTest
  @ValueSource(strings = {"currency=XYZW", "unit=stone", "unit=g", "zone=Sydney"})
  void aRequiredSettingThatMeansNothingIsNoShop(String bad) {
    String key = bad.substring(0, bad.indexOf('=') + 1);
    files.with("shop.properties", ShopFiles.SETTINGS.replaceAll(key + ".*", bad));
    assertTrue(
        files.whyUnreadable().contains(bad.replaceFirst("=(.*)", " \"$1\"")), files::whyUnreadable);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "region=fr",
        "locale=123456789",
        "locale=english",
        "language=english",
        "paper=a3",
        "year_review=13",
        "number_from=0",
        "number_from=A1",
        "number_from=1000000000",
        "pay_by_days=-1",
        "bins=some",
        "quiet_hours=-1",
        "quiet_hours=1.5",
        "tax_included=perhaps",
        "limit.cutting_loss_pct=3%",
        "limit.revisions=5e1",
        "rail=warm",
        "rail.beef=pack",
        "dates=dd/bb/yyyy",
        "dates=dd.mm.yyyy",
        "dates=MM/yyyy"
      })
  void anyOtherBadSettingStopsAndItsDefaultIsUsed(String bad) {
    var defaults = with("");
    files.with("shop.properties", ShopFiles.SETTINGS + bad);
    var notice = files.refuses(NoticeCode.SETTING_BAD, "shop.properties", 5);
    assertEquals(Severity.STOP, notice.severity());
    assertEquals(defaults, files.read().shop().settings());
  }

  @Test
  void aSettingThatIsNotUtf8IsNotPrintedWithHoles() {
    var text = ShopFiles.SETTINGS + "address=1 Caf\u00e9 Road";
    files.with("shop.properties", text.getBytes(StandardCharsets.ISO_8859_1));
    files.refuses(NoticeCode.SETTING_BAD, "shop.properties", 5);
    assertEquals("", files.read().shop().settings().address());
  }

  @Test
  void aMisspeltKeyStops() {
    files.with("shop.properties", ShopFiles.SETTINGS + "\nquite_hours=3\n");
    var notice = files.refuses(NoticeCode.COLUMN_UNKNOWN, "shop.properties", 6);
    assertEquals(Severity.STOP, notice.severity());
  }

  @Test
  void aKeyLikeNoOtherIsNoted() {
    files.with("shop.properties", ShopFiles.SETTINGS + "motto=meat\n");
    files.refuses(NoticeCode.COLUMN_OTHER, "shop.properties", 5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Quiet_Hours=3", "quiet hours=3", "quiet-hours = 3", "QUIETHOURS:3"})
  void aKeyIsReadWithoutRegardToCaseBlanksAndHyphens(String line) {
    files.with("shop.properties", ShopFiles.SETTINGS + line);
    files.refuses(NoticeCode.COLUMN_NAME, "shop.properties", 5);
    assertEquals(3, files.read().shop().settings().quietHours());
  }

  @Test
  void ofTwoKeysOfOneNameTheFirstIsReadAndNothingGoesOut() {
    files.with("shop.properties", ShopFiles.SETTINGS + "quiet_hours=3\nquiet_hours=9\n");
    assertEquals(Severity.STOP, files.onlyNotice().severity());
    assertEquals(3, files.read().shop().settings().quietHours());
  }

  @Test
  void theDatesPatternReadsTheShopsOwnDatesBesideIso() {
    files.with("shop.properties", ShopFiles.SETTINGS + "dates=d/M/yyyy");
    files.with("bodies.csv", "body,species,killed\nB1,beef,3/02/2026\nB2,beef,2026-02-03\n");
    var bodies = files.clean().bodies();
    assertEquals(bodies.get("B2").killed(), bodies.get("B1").killed());
  }
}
