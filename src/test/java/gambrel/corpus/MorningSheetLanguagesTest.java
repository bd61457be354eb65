package gambrel.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.template.Templates;
import gambrel.pages.views.MorningView;
import gambrel.pages.words.WordFiles;
import gambrel.trade.notice.NoticeCode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The morning sheet of every folder of the corpus, in each language. */
class MorningSheetLanguagesTest {
  /** Words of English sentences that none of the other languages has. */
  private static final Set<String> ENGLISH =
      Set.of(
          ("the and this that your you with for what where how is are were has have its been of"
                  + " which weight weighing weights row rows add correct look waits wait loss hung"
                  + " heavier shares released another keyed printed twice then it by lamb beef pork")
              .split(" "));

  /** Quoted cells, names of files, and lists of columns are as the shop's files have them. */
  private static final String DATA = "„[^“]*“|«[^»]*»|\\S*[./,:;_=]\\S+|--\\S+";

  @TempDir private Path work;

  private static MorningView sheet(MorningReport report, String language) {
    var templates = Templates.builtIn();
    var words =
        new WordFiles(
            templates.files()::text, templates.files()::text, report.night().shop().settings());
    return MorningComposer.compose(report, words.of(language));
  }

  private static List<String> texts(MorningView sheet) {
    var texts = new ArrayList<>(sheet.story());
    texts.add(sheet.heading());
    texts.addAll(sheet.notes());
    for (var group : sheet.waits()) {
      texts.add(group.title());
      for (var item : group.items()) {
        texts.addAll(List.of(item.who(), item.message(), item.advice()));
        item.likely().forEach(likely -> texts.addAll(List.of(likely.evidence(), likely.advice())));
        item.likely().forEach(likely -> texts.addAll(likely.lines()));
      }
    }
    var rail = sheet.rail();
    texts.addAll(List.of(rail.hangingNote(), rail.onBlockNote()));
    rail.hanging().forEach(row -> texts.addAll(List.of(row.body(), row.cutBy())));
    rail.onBlock().forEach(row -> texts.addAll(List.of(row.body(), row.rest())));
    var ring = sheet.ring();
    texts.addAll(List.of(ring.issuedMore(), ring.owing()));
    ring.issued().forEach(row -> texts.addAll(List.of(row.body(), row.revision(), row.goesBy())));
    return texts;
  }

  private static Set<String> english(String text) {
    var words = text.replaceAll(DATA, " ").toLowerCase(Locale.ROOT).split("[^\\p{L}]+");
    var found = new TreeSet<>(List.of(words));
    found.retainAll(ENGLISH);
    return found;
  }

  @ParameterizedTest
  @EnumSource
  void hasNoEnglishSentenceInAnotherLanguage(NoticeCode code) throws Exception {
    var report = Corpus.report(Corpus.top().resolve(code.id()), work);
    for (String language : List.of("de", "fr", "es")) {
      for (String text : texts(sheet(report, language))) {
        assertFalse(text.contains("{"), text);
        assertEquals(Set.of(), english(text), text);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"cold-above-hot", "batch-out", "likely-cause", "net-missing"})
  void hasEnglishSentencesInEnglish(String name) throws Exception {
    var sheet = sheet(Corpus.report(Corpus.top().resolve(name), work), "en");
    assertTrue(texts(sheet).stream().anyMatch(text -> !english(text).isEmpty()));
  }
}
