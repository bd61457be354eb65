package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateRulesTest {

  private static final Pattern PRINTED = Pattern.compile("[$#]\\{([^}]*)}");
  private static final Pattern NAME = Pattern.compile("[a-zA-Z]+(\\.[a-zA-Z_]+)*");
  private static final Pattern DIRECTIVE =
      Pattern.compile("<([#@])([\\w.]+)((?:\"[^\"]*\"|[^>\"])*)>");
  private static final Set<String> KNOWN =
      Set.of("if", "elseif", "else", "list", "macro", "nested", "import");
  private static final Pattern ALLOWED =
      Pattern.compile(
          "(\\s+|\"[^\"]*\"|\\?has_content|\\?is_first|\\?is_last|\\?\\?|==|=|&&|\\|\\||\\[]|/"
              + "|[a-zA-Z]+(\\.[a-zA-Z_]+)*)*");
  private static final Pattern QUOTED = Pattern.compile("\"([a-z_]+)\"");
  private static final Pattern WORD = Pattern.compile("\\bwords\\.(\\w+)");

  static Stream<String> templates() {
    return Stream.of(
        "parts.ftlh",
        "statement.ftlh",
        "summary.ftlh",
        "summary-first.ftlh",
        "summary-table.ftlh",
        "morning.ftlh");
  }

  @ParameterizedTest
  @MethodSource("templates")
  void printNamesOfTheViewAndNothingComputed(String template) {
    for (var expression : all(PRINTED, template, 1)) {
      assertTrue(NAME.matcher(expression).matches(), template + " prints " + expression);
    }
  }

  @ParameterizedTest
  @MethodSource("templates")
  void decideByFlagsAndPresenceAlone(String template) {
    var matcher = DIRECTIVE.matcher(withoutComments(template));
    while (matcher.find()) {
      if (matcher.group(1).equals("#")) {
        assertTrue(KNOWN.contains(matcher.group(2)), template + ": " + matcher.group());
      }
      assertTrue(ALLOWED.matcher(matcher.group(3)).matches(), template + ": " + matcher.group());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a + b", "weight?string('0')", "name!'none'", "list.size()", "x gt 3 * 2"})
  void wouldBeCaughtComputing(String expression) {
    assertFalse(ALLOWED.matcher(expression).matches());
  }

  /** The heads of the month's tables are labels too: its parts name them. */
  @Test
  void useOnlyLabelsThatExistAndLeaveNoneUnused() throws IOException {
    var labels = SampleWords.ENGLISH.labels().keySet();
    var used = new TreeSet<String>();
    templates().forEach(template -> used.addAll(all(WORD, template, 1)));
    assertTrue(labels.containsAll(used), used::toString);
    try (var parts = Files.walk(Path.of("src/main/java/gambrel/pages/owner"))) {
      for (var part : parts.filter(Files::isRegularFile).toList()) {
        QUOTED.matcher(Files.readString(part)).results().map(m -> m.group(1)).forEach(used::add);
      }
    }
    used.retainAll(labels);
    assertEquals(new TreeSet<>(labels), used);
  }

  @Test
  void haveNoWordsOfTheirOwn() {
    templates()
        .forEach(
            template -> {
              var text =
                  withoutComments(template)
                      .replaceAll("(?s)<style.*?</style>", "")
                      .replaceAll(DIRECTIVE.pattern(), "")
                      .replaceAll("</[#@][\\w.]*>", "")
                      .replaceAll(PRINTED.pattern(), "")
                      .replaceAll("(?s)<[^>]*>", "")
                      .replaceAll("&#\\d+;", "");
              assertEquals("", text.replaceAll("[\\s,]+", ""), template);
            });
  }

  @Test
  void ofTheUnitedStatesReplaceWhatExistsWithTheSameFigures() {
    var own = Words.of(List.of(SampleWords.file("words_en_US.properties"))).texts();
    assertFalse(own.isEmpty());
    own.forEach(
        (key, text) -> {
          assertTrue(SampleWords.ENGLISH.has(key), key);
          assertEquals(places(SampleWords.ENGLISH.texts().get(key)), places(text), key);
        });
  }

  @Test
  void forOneAndForManyComeInPairs() {
    var texts = SampleWords.ENGLISH.texts();
    for (var key : texts.keySet()) {
      if (key.endsWith(".one")) {
        assertTrue(texts.containsKey(key.replaceAll("one$", "many")), key);
      }
      if (key.endsWith(".many")) {
        assertTrue(texts.containsKey(key.replaceAll("many$", "one")), key);
      }
    }
  }

  @Test
  void sayCarcaseAndInTheUnitedStatesCarcass() {
    SampleWords.ENGLISH
        .texts()
        .forEach(
            (key, text) -> assertFalse(text.toLowerCase(Locale.ROOT).contains("carcass"), key));
    SampleWords.AMERICAN
        .texts()
        .forEach(
            (key, text) -> assertFalse(text.toLowerCase(Locale.ROOT).contains("carcase"), key));
  }

  @Test
  void neverSayThatMeatWasInspectedOrMayBeSold() {
    SampleWords.AMERICAN
        .texts()
        .forEach((key, text) -> assertFalse(text.matches("(?i).*\\binspected\\b.*"), key));
  }

  private static List<String> places(String text) {
    return Pattern.compile("\\{\\d}").matcher(text).results().map(m -> m.group()).sorted().toList();
  }

  private static List<String> all(Pattern pattern, String template, int group) {
    var found = new ArrayList<String>();
    var matcher = pattern.matcher(withoutComments(template));
    while (matcher.find()) {
      found.add(matcher.group(group));
    }
    return found;
  }

  private static String withoutComments(String template) {
    return SampleWords.file(template).replaceAll("(?s)<#--.*?-->", "");
  }
}
