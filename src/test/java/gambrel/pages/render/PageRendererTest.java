package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import gambrel.pages.render.Desk.Named;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PageRendererTest {

  /** One grey pixel. */
  private static final String PNG =
      "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR42mNoAAAAggCBd81ytgAA"
          + "AABJRU5ErkJggg==";

  private static final String FULL =
"""
<style>@page { size: A4; margin: 20mm; @bottom-right { content: counter(page) " / " counter(pages) } }
.next { page-break-before: always }</style>
<p style="text-transform: uppercase">${name} <b>title</b> <i>italic</i></p>
<p class="next">Za\u017c\u00f3\u0142\u0107</p>
<svg viewBox="0 0 90 30"><text x="1.5" y="20">W\u012bremu</text></svg>
""";

  private static final Attachment FIGURES =
      new Attachment("f.csv", "text/csv", "Figures", "a,b\n".getBytes(StandardCharsets.UTF_8));

  @TempDir Path folder;
  private Desk desk;

  @BeforeEach
  void open() {
    desk = new Desk(folder);
  }

  private TemplateProblem problem(String body) {
    return assertThrows(TemplateProblem.class, () -> desk.render(body, new Named("rump")));
  }

  @Test
  void theSameInputGivesTheSameBytes() {
    var info = Desk.INFO.withWatermark("DRAFT");

    assertArrayEquals(
        desk.render(FULL, new Named("rump"), info, FIGURES),
        desk.render(FULL, new Named("rump"), info, FIGURES));
  }

  @Test
  void severalThreadsGiveTheBytesOfOne() {
    desk.render(FULL, new Named("rump"));
    var renderer = new PageRenderer(desk.templates());
    IntFunction<byte[]> page =
        n ->
            renderer.render(
                "page.ftlh", new Named("cut " + n + "\u0101".repeat(n)), Desk.INFO, List.of());
    var alone = IntStream.range(0, 24).mapToObj(page).toList();

    var together = IntStream.range(0, 24).parallel().mapToObj(page).toList();

    for (var n = 0; n < alone.size(); n++) {
      assertArrayEquals(alone.get(n), together.get(n));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr-TR", "th-TH-u-ca-buddhist", "de-DE"})
  void theMachinesLanguageAndZoneDoNotShow(String tag) {
    var here = desk.render(FULL, new Named("rump"), Desk.INFO, FIGURES);
    var locale = Locale.getDefault();
    var zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertArrayEquals(here, desk.render(FULL, new Named("rump"), Desk.INFO, FIGURES));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void eachInputChangesTheDocumentsId() throws IOException {
    var ids = new TreeSet<String>();
    ids.add(id(desk.render("<p>${name}</p>", new Named("rump"))));
    ids.add(id(desk.render("<p>${name}</p>", new Named("chuck"))));
    ids.add(id(desk.render("<p>${name}</p>", new Named("rump"), Desk.INFO, FIGURES)));
    ids.add(id(desk.render("<p>${name}</p>", new Named("rump"), Desk.INFO.withWatermark("X"))));

    assertEquals(4, ids.size());
  }

  private static String id(byte[] pdf) throws IOException {
    try (var reader = new PdfReader(pdf)) {
      return new String(
          Base64.getEncoder()
              .encode(reader.getTrailer().getAsArray(PdfName.ID).getAsString(0).getBytes()),
          StandardCharsets.US_ASCII);
    }
  }

  @Test
  void hostileTextIsPrintedAsText() {
    var name = "<b>bold</b> ${7*7} <#include 'x'> &amp; a\u202Eb \u0000\u0007c";

    var text = Desk.text(desk.render("<p>${name}</p>", new Named(name)));

    assertTrue(text.contains("<b>bold</b> ${7*7} <#include 'x'> &amp; ab"), text);
    assertFalse(text.contains("49"), text);
  }

  @Test
  void aNameWithoutSpacesIsBrokenInsteadOfRunningOffThePage() {
    var body = "<p style='word-wrap: break-word'>${name}</p>";

    var text = Desk.text(desk.render(body, new Named("N".repeat(300))));

    assertEquals(300, text.chars().filter(c -> c == 'N').count());
    assertTrue(Stream.of(text.split("\\s+")).allMatch(line -> line.length() < 150), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"l\u2019animal", "don't", "corrections.csv"})
  void aWordIsNotBrokenBehindAnApostropheOrAFullStop(String word) {
    var body = "<p style='width: 9mm'>${name}</p>";
    var text = Desk.text(desk.render(body, new Named("un mot " + word)));
    assertTrue(text.contains(word), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"serif", "sans-serif", "monospace", "Comic Sans MS", "Helvetica"})
  void everyFontIsEmbeddedWhateverTheStyleSheetAsksFor(String family) throws IOException {
    var body = "<p style=\"font-family: '" + family + "'\">a <b>b</b> <i>c</i> <b><i>d</i></b></p>";
    try (var reader = new PdfReader(desk.render(body, new Named("")))) {
      var fonts = fonts(reader);

      assertEquals(3, fonts.size(), fonts.toString());
      assertTrue(fonts.stream().allMatch(name -> name.contains("+IBMPlexSans-")), fonts.toString());
    }
  }

  /** Names of all font descriptors, which must each carry the font's file. */
  private static List<String> fonts(PdfReader reader) {
    var names = new TreeSet<String>();
    for (var i = 1; i < reader.getXrefSize(); i++) {
      if (reader.getPdfObject(i) instanceof PdfDictionary font && isFont(font)) {
        if (font.get(PdfName.DESCENDANTFONTS) == null) {
          var descriptor = font.getAsDict(PdfName.FONTDESCRIPTOR);
          assertTrue(descriptor != null && descriptor.contains(PdfName.FONTFILE2), font.toString());
        }
        names.add(font.getAsName(PdfName.BASEFONT).toString());
      }
    }
    return List.copyOf(names);
  }

  private static boolean isFont(PdfDictionary dictionary) {
    return PdfName.FONT.equals(dictionary.getAsName(PdfName.TYPE));
  }

  @Test
  void boldIsSetInTheSemiBoldFontAndNotFaked() throws IOException {
    var pdf = desk.render("<p><b>a</b><span style='font-weight:600'>b</span></p>", new Named(""));
    try (var reader = new PdfReader(pdf)) {
      var content = new String(reader.getPageContent(1), StandardCharsets.ISO_8859_1);

      assertEquals(1, fonts(reader).size());
      assertFalse(content.contains(" Tr"), "stroked letters");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"SZKIC", "being checked by the shop - do not rely on these weights"})
  void theWatermarkStandsOnEveryPageAsAnArtifact(String words) throws IOException {
    var pages = contents(desk.render(FULL, new Named(""), Desk.INFO.withWatermark(words)));

    assertEquals(2, pages.size());
    for (var page : pages) {
      var artifact = page.substring(Math.max(0, page.indexOf("/Artifact ")));
      assertTrue(artifact.startsWith("/Artifact "), artifact);
      assertTrue(artifact.contains("/Subtype/Watermark"), artifact);
      assertTrue(artifact.contains("/ActualText(" + words + ")"), artifact);
      assertTrue(artifact.contains("Tj"), "painted as text");
    }
  }

  @Test
  void withoutAWatermarkPagesHaveNone() throws IOException {
    var pages = contents(desk.render(FULL, new Named("")));

    assertTrue(pages.stream().noneMatch(page -> page.contains("/Watermark")), pages.toString());
  }

  /** The drawing operators of each page. */
  private static List<String> contents(byte[] pdf) throws IOException {
    try (var reader = new PdfReader(pdf)) {
      var pages = new ArrayList<String>();
      for (var page = 1; page <= reader.getNumberOfPages(); page++) {
        pages.add(new String(reader.getPageContent(page), StandardCharsets.ISO_8859_1));
      }
      return pages;
    }
  }

  @Test
  void pagesAreNumberedWithTheirTotal() {
    var pages = Desk.pages(desk.render(FULL, new Named("")));

    assertTrue(pages.get(0).contains("1 / 2"), pages.get(0));
    assertTrue(pages.get(1).contains("2 / 2"), pages.get(1));
  }

  @Test
  void aTablesHeadRepeatsOnEachPage() {
    var body =
        "<table style='-fs-table-paginate: paginate'><thead><tr><th>Cut</th></tr></thead><tbody>"
            + "<#list 1..120 as i><tr><td>${name} ${i}</td></tr></#list></tbody></table>";

    var pages = Desk.pages(desk.render(body, new Named("rump")));

    assertTrue(pages.size() > 1);
    assertTrue(pages.stream().allMatch(page -> page.contains("Cut")), pages.toString());
  }

  @Test
  void aRunningHeaderStandsOnEachPage() {
    var style =
        "<style>@page { margin: 20mm; @top-left { content: element(head) } }"
            + " #head { position: running(head) } .next { page-break-before: always }</style>";
    var body = "<div id='head'>${name}</div><p>one</p><p class='next'>two</p>";

    var pages = Desk.pages(desk.render(style + body, new Named("Totara")));

    assertEquals(2, pages.size());
    assertTrue(pages.stream().allMatch(page -> page.contains("Totara")), pages.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4 595", "letter 612"})
  void paperComesFromTheStyleSheet(String paper) throws IOException {
    var parts = paper.split(" ");
    desk.put("paper.css", "@page { size: " + parts[0] + " }");
    var head = "<link rel='stylesheet' type='text/css' href='paper.css'/>";
    desk.put("t.ftlh", "<html><head>" + head + "</head><body>a</body></html>");

    var pdf =
        new PageRenderer(desk.templates()).render("t.ftlh", new Named(""), Desk.INFO, List.of());

    try (var reader = new PdfReader(pdf)) {
      assertEquals(Integer.parseInt(parts[1]), (int) reader.getPageSize(1).getWidth());
    }
  }

  @Test
  void theDocumentDescribesItself() throws IOException {
    var info = new DocumentInfo("T\u0101 <b>", "mi", "A & B", "S", Desk.INFO.created());
    try (var reader = new PdfReader(desk.render("<p/>", new Named(""), info, FIGURES))) {
      var about = reader.getInfo();
      var catalog = reader.getCatalog();

      assertEquals("T\u0101 <b>", about.get("Title"));
      assertEquals("A & B", about.get("Author"));
      assertEquals("D:20260301050000Z", about.get("CreationDate"));
      assertEquals("D:20260301050000Z", about.get("ModDate"));
      assertEquals("mi", catalog.getAsString(PdfName.LANG).toUnicodeString());
      assertEquals(1, catalog.getAsArray(PdfName.AF).size());
      assertEquals(PdfName.GTS_PDFA1, intent(catalog).getAsName(PdfName.S), "colours are defined");
      assertTrue(
          new String(reader.getMetadata(), StandardCharsets.UTF_8).contains("T\u0101 &lt;b"));
    }
  }

  private static PdfDictionary intent(PdfDictionary catalog) {
    PdfArray intents = catalog.getAsArray(PdfName.OUTPUTINTENTS);
    return intents.getAsDict(0);
  }

  @Test
  void aPictureComesFromTheFolderOrFromThePageItself() {
    desk.put("M\u0101ori logo.png", Base64.getDecoder().decode(PNG));

    var pdf =
        desk.render(
            "<img src='M\u0101ori logo.png'/><img src='data:image/png;base64," + PNG + "'/>",
            new Named(""));

    var text = new String(pdf, StandardCharsets.ISO_8859_1);
    assertEquals(2, text.split("/Subtype */Image", -1).length - 1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<img src='http://127.0.0.1:9/x.png'/>",
        "<img src='file:///etc/passwd'/>",
        "<img src='/etc/passwd'/>",
        "<img src='../x.png'/>",
        "<img src='no.png'/>",
        "<img src='jar:file:/x.jar!/y.png'/>",
        "<img src='page.ftlh'/>",
        "<img src='data:image/svg+xml;base64,PHN2Zy8+'/>",
        "<img src='data:image/png;base64,AAAA'/>",
        "<p style='background-image: url(http://127.0.0.1:9/x.png)'>a</p>"
      })
  void nothingIsFetchedFromElsewhere(String body) {
    assertEquals("page.ftlh", problem(body).template());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<link rel='stylesheet' href='http://127.0.0.1:9/x.css'/>",
        "<link rel='stylesheet' href='file:/etc/passwd'/>",
        "<link rel='stylesheet' href='no.css'/>",
        "<style>@import url(http://127.0.0.1:9/x.css);</style>",
        "<style>@import 'no.css';</style>",
        "<style>@font-face { font-family: X; src: url(x.ttf) }</style>"
      })
  void styleSheetsComeFromTheFolderOnly(String head) {
    desk.put("t.ftlh", "<html><head>" + head + "</head><body>a</body></html>");
    var renderer = new PageRenderer(desk.templates());

    assertThrows(
        TemplateProblem.class,
        () -> renderer.render("t.ftlh", new Named(""), Desk.INFO, List.of()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"<p>open", "<p>a&nbsp;b</p>", "<p class=x>a</p>", "<br>"})
  void aPageThatIsNotWellFormedIsShown(String body) {
    var problem = problem(body);

    assertEquals("page.ftlh", problem.template());
    assertEquals(Fault.NOT_XHTML, problem.fault());
    assertTrue(problem.values().get("text").contains(body), problem.getMessage());
  }

  @Test
  void withoutLayoutTheMarkupIsCheckedAndNoPageIsMade() {
    desk.put("t.ftlh", "<html><body>${name}</body></html>");
    desk.put("open.ftlh", "<html><body><p>${name}</body></html>");
    var renderer = new PageRenderer(desk.templates()).fillingOnly();

    assertEquals(0, renderer.render("t.ftlh", new Named("a"), Desk.INFO, List.of()).length);
    var problem =
        assertThrows(
            TemplateProblem.class,
            () -> renderer.render("open.ftlh", new Named("a"), Desk.INFO, List.of()));

    assertEquals(Fault.NOT_XHTML, problem.fault());
  }

  @Test
  void externalEntitiesAreRefused() {
    desk.put(
        "t.ftlh",
        "<!DOCTYPE html [<!ENTITY x SYSTEM 'file:/etc/passwd'>]><html><body>&x;</body></html>");
    var renderer = new PageRenderer(desk.templates());

    var problem =
        assertThrows(
            TemplateProblem.class,
            () -> renderer.render("t.ftlh", new Named(""), Desk.INFO, List.of()));

    assertEquals(Fault.DOCTYPE, problem.fault());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<#list 1.. as i></#list>",
        "<#macro m><#list 1.. as i><#if i < 0>x</#if></#list></#macro><@m/>"
      })
  void aTemplateThatNeverEndsIsStopped(String body) throws InterruptedException {
    desk.put("t.ftlh", "<p>" + body + "</p>");
    var renderer = new PageRenderer(desk.templates(), Duration.ofMillis(300));

    var problem =
        assertThrows(
            TemplateProblem.class,
            () -> renderer.render("t.ftlh", new Named(""), Desk.INFO, List.of()));

    assertEquals(Fault.TOO_SLOW, problem.fault());
    for (var thread : Thread.getAllStackTraces().keySet()) {
      if (thread.getName().equals("page t.ftlh")) {
        thread.join(Duration.ofSeconds(20).toMillis());
        assertFalse(thread.isAlive(), "the loop goes on in the background");
      }
    }
  }

  @Test
  void aTemplateThatTookTooLongIsNotTriedAgain() {
    desk.put("t.ftlh", "<p><#if name == 'endless'><#list 1.. as i></#list></#if></p>");
    desk.put("other.ftlh", "<html><head></head><body><p>${name}</p></body></html>");
    var renderer = new PageRenderer(desk.templates(), Duration.ofSeconds(3));
    var first = problemOf(renderer, "endless");

    assertEquals(Fault.TOO_SLOW, first.fault());
    long start = System.nanoTime();
    for (int page = 0; page < 57; page++) {
      var next = problemOf(renderer, "rump");
      assertEquals(Fault.TOO_SLOW, next.fault());
      assertEquals(first.values(), next.values());
    }
    assertTrue(Duration.ofNanos(System.nanoTime() - start).toSeconds() < 3);
    var other = renderer.render("other.ftlh", new Named("rump"), Desk.INFO, List.of());
    assertEquals("rump", Desk.text(other).strip());
  }

  private static TemplateProblem problemOf(PageRenderer renderer, String name) {
    return assertThrows(
        TemplateProblem.class,
        () -> renderer.render("t.ftlh", new Named(name), Desk.INFO, List.of()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<#macro m><@m/></#macro><@m/>",
        "<#list 1..20000 as i><div></#list><#list 1..20000 as i></div></#list>"
      })
  void aPageWithoutBottomIsAProblem(String body) {
    assertEquals("page.ftlh", problem(body).template());
  }

  @Test
  void documentsDifferWhenTheirTextDoes() {
    assertNotEquals(
        Desk.text(desk.render("<p>${name}</p>", new Named("rump"))),
        Desk.text(desk.render("<p>${name}</p>", new Named("chuck"))));
  }
}
