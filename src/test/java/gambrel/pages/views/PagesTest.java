package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.template.Templates;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PagesTest {

  private static final PageRenderer RENDERER = new PageRenderer(Templates.of(SampleWords.FOLDER));
  private static final Map<Record, PageReader> PRINTED = new ConcurrentHashMap<>();
  private static final Words W = SampleWords.ENGLISH;

  static Stream<String> samples() {
    return SampleViews.all().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void printsEveryTextOfItsView(String sample) {
    var view = SampleViews.all().get(sample);
    var page = print(view);
    assertAll(
        PrintedText.of(view).stream()
            .map(text -> () -> assertTrue(page.prints(text), "not printed: " + text)));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void saysOnEachSheetWhichOfHowManyItIs(String sample) {
    var pages = print(SampleViews.all().get(sample)).pages();
    for (var i = 0; i < pages.size(); i++) {
      assertTrue(pages.get(i).contains("Page" + (i + 1) + "of" + pages.size()));
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void leavesNoSheetWithoutContent(String sample) {
    var view = SampleViews.all().get(sample);
    var margins = margins(view);
    for (var page : print(view).pages()) {
      assertTrue(page.length() > margins + "Page10of10".length(), page);
    }
  }

  @Test
  void answersInTheOrderInWhichCustomersAsk() {
    assertInOrder(
        print(SampleBeef.full()),
        "Beef, steer",
        "GB 0417, left ear",
        "Tuesday 10 March 2026",
        "B-0341",
        W.say("packs.question"),
        "224 packs, 243.3 kg",
        W.say("owe.question"),
        "$399.04",
        W.say("why.question"),
        "About 612 kg alive became 231.4 kg",
        W.say("flow.hot"),
        W.say("normal.question"),
        W.say("mine.question"),
        W.say("boxes.title"),
        "Chuck steaks",
        "Rump steaks",
        W.say("keeping"),
        W.say("caution.raw"),
        W.say("charges.due.left"));
  }

  @Test
  void showsNothingOfWhatIsNotKnown() {
    var page = print(SampleRare.minimal());
    for (var label : List.of("charges", "pending", "changes", "keeping", "cautions")) {
      assertFalse(page.prints(W.say(label)), label);
    }
    assertFalse(page.prints(W.say("owe.question")));
  }

  @Test
  void aHeldStatementIsADraftOnEverySheetAndSaysWhy() {
    var page = print(SamplePork.heldPork());
    page.pages().forEach(sheet -> assertTrue(sheet.contains("DRAFT")));
    assertTrue(page.prints("We are still checking this statement"));
    assertTrue(page.prints("than we accept: 4.12 kg."));
    assertFalse(page.prints("Issued"));
  }

  @Test
  void anIssuedStatementIsNoDraft() {
    assertFalse(print(SampleBeef.full()).prints("DRAFT"));
  }

  @Test
  void aRevisionBeginsWithWhatChanged() {
    assertInOrder(
        print(SampleBeef.revision()),
        "It replaces revision 1 of 27 March 2026",
        "11 packs, 9.42 kg",
        "12 packs, 10.24 kg",
        W.say("packs.question"));
  }

  @Test
  void namesWhatTheTradeMustNotBeMisreadIn() {
    var page = print(SampleBeef.full());
    for (var words :
        List.of(
            "Weight into the boning room",
            "Bench loss (drip, evaporation, not weighed)",
            "Bone, not taken home")) {
      assertTrue(page.prints(words), words);
    }
  }

  @Test
  void packsGivenOutrightComeWithoutCharges() {
    assertFalse(print(SampleRare.outrightOnly()).prints(W.say("charges")));
  }

  @Test
  void usesThePaperOfTheShop() {
    var a4 = print(SampleBeef.full()).size();
    var letter = print(SampleAmerican.american()).size();
    assertEquals(595.3, a4.getWidth(), 0.5);
    assertEquals(841.9, a4.getHeight(), 0.5);
    assertEquals(612, letter.getWidth(), 0.5);
    assertEquals(792, letter.getHeight(), 0.5);
  }

  @Test
  void aLongListRepeatsItsHeadAndLosesNoLine() {
    var page = print(SampleRare.lines(400));
    assertTrue(page.pages().size() > 5);
    for (var sheet : page.pages()) {
      assertEquals(sheet.matches(".*Cut\\d.*"), sheet.contains("Packskg"), sheet);
    }
    assertInOrder(
        page, IntStream.rangeClosed(1, 400).mapToObj(i -> "Cut " + i).toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(ints = {28, 29, 30, 31, 32, 33, 34, 35, 36})
  void aTotalNeverStandsOnASheetWithoutACut(int lines) {
    var view = SampleRare.lines(lines);
    var total = view.boxes().orElseThrow().total().orElseThrow();
    for (var sheet : print(view).pages()) {
      if (sheet.contains(PageReader.squeeze(total.name() + total.packs() + total.weight()))) {
        assertTrue(sheet.contains("Cut" + lines), sheet);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aHeadingNeverStandsAtTheFootOfASheet(int reasons) {
    var sample = SamplePork.heldPork();
    var more = new ArrayList<String>();
    for (var i = 0; i < 2 * reasons; i++) {
      more.add(W.say("draft.reason.row-set-aside"));
    }
    for (var sheet : print(withReasons(sample, more)).pages()) {
      assertEquals(
          sheet.contains(PageReader.squeeze(W.say("boxes.title") + W.say("boxes.packs"))),
          sheet.contains("Shoulderroasts"),
          sheet);
    }
  }

  @Test
  void namesAreTextWhateverTheyLookLike() {
    var name = "<b>Ann</b> & ${customer} <#stop> \"Q\"";
    var sample = new SampleStatement(W, "B-1", W.say("species.beef"), name);
    assertTrue(print(sample.answer("packs", name, name).view()).prints(name));
  }

  @Test
  void theMonthListsEveryBodyOnce() {
    var page = print(SampleMonth.month(400));
    for (var i = 0; i < 400; i++) {
      var body = "B-0" + (300 + i);
      var first = page.all().indexOf(body + "A");
      assertTrue(page.prints(body), body);
      assertEquals(first, page.all().lastIndexOf(body + "A"), body);
    }
  }

  @Test
  void aQuietMorningSaysThatAllIsWellAndNoMore() {
    var page = print(SampleMorning.quietMorning());
    assertTrue(page.prints(W.say("morning.well")));
    for (var label : List.of("hangs", "on_the_block", "not_packed", "issued")) {
      assertFalse(page.prints(W.say(label)), label);
    }
  }

  private static StatementView withReasons(StatementView view, List<String> reasons) {
    return new StatementView(
        view.page(),
        view.words(),
        view.shop(),
        view.kind(),
        view.issue(),
        view.customer(),
        view.address(),
        view.heading(),
        view.animal(),
        view.note(),
        Optional.of(new StatementView.Draft(view.draft().orElseThrow().sentence(), reasons)),
        view.changes(),
        view.answers(),
        view.flow(),
        view.boxes(),
        view.pending(),
        view.charges(),
        view.keeping(),
        view.cautions());
  }

  private static int margins(Record view) {
    var page = pageOf(view);
    return PageReader.squeeze(page.head() + page.foot()).length();
  }

  private static PageView pageOf(Record view) {
    if (view instanceof StatementView statement) {
      return statement.page();
    }
    return view instanceof SummaryView summary ? summary.page() : ((MorningView) view).page();
  }

  private static PageReader print(Record view) {
    return PRINTED.computeIfAbsent(view, page -> PageReader.of(Preview.render(RENDERER, page)));
  }

  private static void assertInOrder(PageReader page, String... texts) {
    var at = 0;
    for (var text : texts) {
      var next = page.all().indexOf(PageReader.squeeze(text), at);
      assertTrue(next >= 0, "missing, or too early: " + text);
      at = next;
    }
  }
}
