package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.Cause;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.views.Words;
import gambrel.pages.words.WordFiles;
import gambrel.trade.cuts.Extension.Flaw;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.sending.Unsent;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoticeWordsTest {
  private static final Path SOURCES = Path.of("src/main/java/gambrel");
  private static final Pattern LITERAL = Pattern.compile("\"([A-Z][A-Z0-9_.]*)\"");

  /** Words that are the same in English and in one of the other languages. */
  private static final Set<String> SAME = Set.of("Ticket {ticket}", "ticket {ticket}");

  private static final Map<String, String> ENGLISH = texts("en");

  @TempDir private Path folder;

  private static Map<String, String> texts(String language) {
    String file = FarmShop.file("notices_" + language + ".properties").orElseThrow();
    return Words.of(List.of(file)).texts();
  }

  private static Set<String> places(String text) {
    return NoticeWords.PLACE
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toSet());
  }

  private static boolean isSaid(String key) {
    return Stream.of("", ".one", ".many").anyMatch(form -> ENGLISH.containsKey(key + form));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es"})
  void haveEveryKeyOfEnglishWithTheSameValues(String language) {
    var words = texts(language);
    assertEquals(new TreeSet<>(ENGLISH.keySet()), new TreeSet<>(words.keySet()));
    ENGLISH.forEach((key, text) -> assertEquals(places(text), places(words.get(key)), key));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es"})
  void areNotEnglish(String language) {
    var words = texts(language);
    var same =
        ENGLISH.entrySet().stream()
            .filter(word -> hasLetters(NoticeWords.PLACE.matcher(word.getValue()).replaceAll("")))
            .filter(word -> word.getValue().equals(words.get(word.getKey())))
            .filter(word -> !SAME.contains(word.getValue()))
            .toList();
    assertEquals(List.of(), same);
  }

  private static boolean hasLetters(String text) {
    return text.chars().anyMatch(Character::isLetter);
  }

  @ParameterizedTest
  @EnumSource
  void sayEveryCodeAndWhatToDoAboutIt(NoticeCode code) {
    String name = code.name();
    assertTrue(isSaid(name) || ENGLISH.keySet().stream().anyMatch(k -> k.startsWith(name + ".")));
    assertTrue(ENGLISH.containsKey(name + ".advice"), name);
  }

  @Test
  void sayEveryReasonCauseFlawAndSpecies() {
    Stream.of(ReasonCode.values()).forEach(c -> assertTrue(isSaid("REASON." + c), c::name));
    Stream.of(Flaw.values()).forEach(f -> assertTrue(isSaid("SHOP_ROW_BAD.FLAW." + f), f::name));
    Stream.of(Species.values()).forEach(s -> assertTrue(isSaid("SPECIES." + s), s::name));
    Stream.of(State.values()).forEach(s -> assertTrue(isSaid("REVISION." + s), s::name));
    for (var cause : Cause.values()) {
      boolean missing = cause.name().endsWith("_NOT_WEIGHED");
      assertTrue(missing || isSaid("CORRECTION." + cause), cause::name);
      String key = "LIKELY_CAUSE." + cause;
      assertTrue(ENGLISH.keySet().stream().anyMatch(k -> k.startsWith(key)), cause::name);
    }
  }

  /** A key is a literal, or ends in one after the name of an enumeration's constant. */
  @Test
  void haveNoVariantThatNothingSays() throws IOException {
    var source = new StringBuilder();
    try (var files = Files.walk(SOURCES)) {
      for (var file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        source.append(Files.readString(file));
      }
    }
    var literals =
        LITERAL.matcher(source).results().map(m -> m.group(1)).collect(Collectors.toSet());
    var constants =
        Stream.of(
                NoticeCode.values(),
                ReasonCode.values(),
                Cause.values(),
                Flaw.values(),
                Species.values(),
                State.values(),
                TemplateProblem.Fault.values(),
                Unsent.Why.values())
            .flatMap(Stream::of)
            .map(Object::toString)
            .collect(Collectors.toSet());
    constants.addAll(Set.of("HOT", "COLD", "AGED", "BONE", "FAT", "WASTE"));
    constants.addAll(Set.of("SCALE", "CODE", "CUSTOMER", "BATCH", "BODY"));
    var unused = new TreeSet<String>();
    for (String key : ENGLISH.keySet()) {
      String base = key.replaceAll("\\.(one|many|advice)$", "");
      String last = base.substring(base.lastIndexOf('.') + 1);
      String tail = base.substring(base.indexOf('.') + 1);
      boolean said =
          Stream.of(base, tail, last, "CELL." + tail).anyMatch(literals::contains)
              || constants.contains(last)
              || literals.contains("." + last);
      if (!said && !source.toString().contains("." + last + "\"")) {
        unused.add(key);
      }
    }
    assertEquals(Set.of(), unused);
  }

  @Test
  void putEachKindOfValueAsDataFilesDo() {
    var notice =
        Notice.of(NoticeCode.SCALE_FAILED, Place.NONE)
            .aboutTicket("bench", "7")
            .with("found", new Weight(2_005_000), WeightUnit.KG)
            .with("expected", new Weight(2_000_000), WeightUnit.KG)
            .with("tolerance", new Value.Shown(new BigDecimal("0.005"), WeightUnit.KG));
    assertEquals(
        "Scale bench showed 20.050 kg for a test weight of 20.000 kg; at most 0.005 kg off passes.",
        NoticeWords.ENGLISH.message(notice));
  }

  @ParameterizedTest
  @CsvSource({
    "en, '1,200.5\u00a0kg on 6 March 2026, 14:05, 3.5%, 1/2, 1,200'",
    "de, '1.200,5\u00a0kg on 6. März 2026, 14:05, 3,5\u00a0%, 1/2, 1.200'"
  })
  void printNumbersAndDatesAsTheReaderDoes(String language, String said) {
    var settings = new FarmShop(folder).night().shop().settings();
    var wording = new WordFiles(FarmShop::file, FarmShop::file, settings).of(language);
    var words =
        new NoticeWords(
            Map.of("ALL", "{weight} on {time}, {percent}, {ratio}, {count}"),
            wording.formats(),
            part -> "");
    var phrase =
        Phrase.of("ALL")
            .with("weight", new Value.Shown(new BigDecimal("1200.5"), WeightUnit.KG))
            .with("time", LocalDateTime.of(2026, 3, 6, 14, 5))
            .with("percent", new Value.Percent(BigFraction.of(7, 2)))
            .with("ratio", new Value.Ratio(BigFraction.of(1, 2)))
            .with("count", 1200);
    assertEquals(said, words.of(phrase));
  }

  @Test
  void printOnlyTheBeginningOfAMessageThatIsTooLong() {
    var notice = Notice.of(NoticeCode.CODE_UNKNOWN, Place.NONE).with("code", "x".repeat(3_000));
    assertEquals(2_000, NoticeWords.ENGLISH.message(notice).length());
  }

  @Test
  void takeTheAdviceOfAVariantOrElseOfItsCode() {
    var code = NoticeCode.SETTING_BAD;
    assertFalse(
        NoticeWords.ENGLISH
            .advice(Notice.of(code, Place.NONE))
            .equals(NoticeWords.ENGLISH.advice(Notice.of(code, "IGNORE_SLOW", Place.NONE))));
    assertEquals(
        NoticeWords.ENGLISH.advice(Notice.of(code, Place.NONE)),
        NoticeWords.ENGLISH.advice(Notice.of(code, "NOT_UTF8", Place.NONE)));
  }
}
