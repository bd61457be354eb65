package gambrel.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.statement.FarmShop;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WordFilesTest {
  @TempDir private Path folder;

  private WordFiles files(String settings, Map<String, String> own) {
    return new WordFiles(
        FarmShop::file,
        name -> Optional.ofNullable(own.get(name)).or(() -> FarmShop.file(name)),
        settings(settings));
  }

  private Settings settings(String lines) {
    return new FarmShop(folder).add("shop.properties", lines).night().shop().settings();
  }

  @Test
  void areChosenByTheReadersLanguage() {
    var files = files("", Map.of("words_it.properties", "packs.question=Quanto?\n"));
    assertEquals("Quanto?", files.of("it").say("packs.question"));
    assertEquals("How much is there?", files.of("").say("packs.question"));
    assertEquals("it-AU", files.of("it").language());
  }

  @Test
  void ofALanguageThatLackAWordHaveItInEnglish() {
    var files = files("", Map.of("words_it.properties", "packs.question=Quanto?\n"));
    assertEquals("What do I owe?", files.of("it").say("owe.question"));
  }

  @Test
  void ofTheReadersCountryStandOverTheLanguages() {
    var files = files("", Map.of("words_fr_CA.properties", "page=Feuillet\n"));
    assertEquals("Feuillet", files.of("fr-CA").say("page"));
    assertEquals("sur", files.of("fr-CA").say("of"));
    assertEquals("Page", files.of("fr").say("page"));
  }

  @Test
  void ofTheShopMayLackWordsThatTheLanguageHas() {
    var files = files("", Map.of("words_de.properties", "packs.question=Wie viele?\n"));
    assertEquals("Wie viele?", files.of("de").say("packs.question"));
    assertEquals("Was schulde ich?", files.of("de").say("owe.question"));
  }

  @Test
  void nameClassesOfAnimalsThatTheLanguageKnowsAndLeaveOthersAsTheyStand() {
    var shop = new FarmShop(folder).add("shop.properties", "language=de");
    shop.add("bodies.csv", "B1,beef,Heifer,2026-03-02,,,,c-ann,1,,,");
    shop.add("bodies.csv", "B2,beef,Galloway,2026-03-02,,,,c-ann,1,,,");
    var night = shop.night();
    var german = new WordFiles(FarmShop::file, FarmShop::file, night.shop().settings()).of("");
    assertEquals("Färse", german.category(night.shop().bodies().get("B1")));
    assertEquals("Galloway", german.category(night.shop().bodies().get("B2")));
  }

  @Test
  void thatDoNotExistLeaveTheReaderWithEnglish() {
    assertEquals("How much is there?", files("", Map.of()).of("pl").say("packs.question"));
    assertEquals("en-AU", files("", Map.of()).of("pl").language());
  }

  @Test
  void ofTheRegionStandOverTheLanguages() {
    var american = files("region=us\nlocale=en-US", Map.of()).of("");
    assertTrue(american.say("packs.whole.lead", "9 lb").contains("carcass"));
    assertEquals("March 2, 2026", american.formats().date(LocalDate.of(2026, 3, 2)));
  }

  @Test
  void ofTheShopStandBeforeTheBuiltInOnesAndMayLackWords() {
    var files = files("", Map.of("words_en.properties", "packs.question=How many?\n"));
    assertEquals("How many?", files.of("").say("packs.question"));
    assertEquals("What do I owe?", files.of("").say("owe.question"));
  }

  /** A shop that copied the English file still reads the words of its region over it. */
  @Test
  void ofTheRegionStandOverTheShopsOwnOfTheLanguage() {
    var own = Map.of("words_en.properties", "packs.whole.lead=The carcase as it hung, {0}.\n");
    var american = files("region=us\nlocale=en-US", own).of("");
    assertTrue(american.say("packs.whole.lead", "9 lb").contains("carcass"));
  }

  @Test
  void thatAskForAFigureWhichTheyAreNotGivenAreRefused() {
    var files = files("", Map.of("words_en.properties", "packs.whole.lead=It is {4}.\n"));
    var problem = assertThrows(IllegalArgumentException.class, () -> files.of(""));
    assertEquals("\"packs.whole.lead\" asks for {4}, which it is not given", problem.getMessage());
  }

  @Test
  void withADatePatternThatIsNoneAreRefused() {
    var files = files("", Map.of("words_en.properties", "date.date=b{{\n"));
    assertThrows(IllegalArgumentException.class, () -> files.of(""));
  }

  @Test
  void ofNoticesAreTheShopsOwnWhereItHasThem() {
    var own = "CODE_UNKNOWN=Wir kennen {code} nicht.\nCODE_UNKNOWN.advice=Fragen.\n";
    var words = files("language=de", Map.of("notices_de.properties", own)).of("").notices();
    var notice = Notice.of(NoticeCode.CODE_UNKNOWN, Place.NONE).with("code", "9");
    assertEquals("Wir kennen 9 nicht.", words.message(notice));
    assertEquals("Fragen.", words.advice(notice));
    var other = Notice.of(NoticeCode.NET_MISSING, Place.NONE);
    assertEquals("Die Zeile hat weder ein Netto- noch ein Bruttogewicht.", words.message(other));
  }

  @Test
  void ofNoticesMayNotAskForAValueThatTheNoticeDoesNotHave() {
    var files = files("", Map.of("notices_en.properties", "CODE_UNKNOWN={code} of {colour}\n"));
    var problem = assertThrows(IllegalArgumentException.class, () -> files.of("en"));
    assertEquals("\"CODE_UNKNOWN\" asks for {colour}, which it is not given", problem.getMessage());
  }
}
