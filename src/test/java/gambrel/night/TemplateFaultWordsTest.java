package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import gambrel.pages.render.template.Templates;
import gambrel.pages.views.Words;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.ValueFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is wrong with a template, in the reader's language. */
class TemplateFaultWordsTest {
  /** The values of a fault, as {@link Fault} names them. */
  private static Map<String, String> values(Fault fault) {
    var names =
        switch (fault) {
          case NO_NAME -> List.of("name");
          case NO_FILE -> List.of("file");
          case LANGUAGE, WORDS, LAYOUT -> List.of("message");
          case OUTSIDE, FONT -> List.of("address");
          case NOT_PNG, PICTURE -> List.of("picture");
          case NOT_XHTML, DOCTYPE -> List.of("line", "column", "text");
          case ELEMENT, INSIDE_TEXT -> List.of("element");
          case LOOSE_TEXT -> List.of("text");
          case ATTRIBUTE -> List.of("element", "attribute", "value");
          case TOO_SLOW -> List.of("seconds");
          case NOT_UTF8, CLOCK, TOO_LONG, TOO_DEEP, MEMORY -> List.<String>of();
        };
    return names.stream().collect(Collectors.toMap(name -> name, name -> "A" + name + "Z"));
  }

  private static NoticeWords words(String language) {
    var file = Templates.builtIn().files().text("notices_" + language + ".properties");
    return new NoticeWords(
        Words.of(List.of(file.orElseThrow())).texts(), ValueFormat.PLAIN, part -> "");
  }

  private static String say(TemplateProblem problem, String language) {
    return words(language).of(Page.phrase(problem));
  }

  @ParameterizedTest
  @EnumSource
  void everyFaultNamesItsValuesInEveryLanguage(Fault fault) {
    var values = values(fault);
    var problem = TemplateProblem.of("page.ftlh", fault, values);
    for (String language : List.of("en", "de", "fr", "es")) {
      var text = say(problem, language);
      assertTrue(text.startsWith("page.ftlh"), text);
      assertFalse(text.contains("{"), text);
      values.values().forEach(value -> assertTrue(text.contains(value), text));
    }
  }

  @ParameterizedTest
  @EnumSource
  void noOtherLanguageSaysAFaultInEnglish(Fault fault) {
    var problem = TemplateProblem.of("page.ftlh", fault, values(fault));
    var texts = Stream.of("en", "de", "fr", "es").map(language -> say(problem, language)).toList();
    assertEquals(4, texts.stream().distinct().count(), texts.toString());
  }

  @Test
  void aDrawingsFaultIsOneSentence() {
    var problem = TemplateProblem.of("page.ftlh", Fault.ELEMENT, Map.of("element", "blink"));
    assertEquals("page.ftlh: in the drawing, <blink> cannot be drawn", say(problem, "en"));
  }
}
