package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import gambrel.pages.render.pdf.Fonts;
import gambrel.pages.render.pdf.TaggingDevice;
import gambrel.pages.render.template.TemplateFiles;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.pdf.ITextTextRenderer;

/** Styles from sheets that are parsed once are those that the layout engine finds by itself. */
class PageStylesTest {
  private static final List<String> SIMPLE =
      List.of(
          "p",
          "b",
          "td",
          "*",
          ".x",
          ".y",
          "p.x",
          ".x.y",
          "#one",
          "p:first-child",
          ":last-child",
          "tr:nth-child(2n+1)",
          "b:nth-child(3)",
          "td:nth-child(even)",
          "[title]",
          "[title=t]",
          "p[title~=u]",
          ":lang(en)",
          "a:link",
          "b:hover",
          "tr:first-child",
          "td + td",
          "p + p + b",
          ".x:first-child + .y",
          "p:before",
          ".y:after",
          "p:first-line");
  private static final List<String> DECLARED =
      List.of(
          "color: #123456",
          "color: red !important",
          "margin: 1mm",
          "font-weight: 600",
          "content: 'x'",
          "border: 1pt solid #000",
          "display: block");
  private static final List<String> ATTRIBUTES =
      List.of(
          "",
          " class='x'",
          " class='y x'",
          " class='xy'",
          " id='one'",
          " title='t'",
          " title='u v'",
          " lang='en-NZ'",
          " style='color: blue'",
          " width='40'",
          " align='right'");
  private static final List<String> LANGUAGES =
      List.of("", "<meta http-equiv='Content-Language' content='en'/>");
  private static final List<String> NAMES = List.of("p", "b", "td", "tr", "table", "a", "div");

  private final TaggingDevice device = new TaggingDevice(20);
  private final ClosedUserAgent agent =
      new ClosedUserAgent("page.ftlh", new TemplateFiles(Optional.empty()), device, 20);
  private final SharedContext context =
      new SharedContext(
          agent,
          Fonts.resolver(),
          new Pictures("page.ftlh", device, 20),
          new ITextTextRenderer(),
          72,
          20);
  private final StyleSheets shared = new StyleSheets();

  private StyleReference on(Document page, StyleReference styles) {
    styles.setDocumentContext(context, new PageNamespace(), page, new Paper());
    return styles;
  }

  private static Document page(String style, String body) {
    return page(style, "", body);
  }

  private static Document page(String style, String head, String body) {
    return XhtmlParser.parse(
        "page.ftlh",
        "<html><head>%s<style>%s</style></head><body>%s</body></html>"
            .formatted(head, style, body));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void areTheEnginesOwnForAnySheetAndPage(long seed) {
    var dice = new SplittableRandom(seed);
    var sheet = sheet(dice);
    var names = some(NAMES, dice);
    var attributes = some(ATTRIBUTES, dice);
    for (int number = 0; number < 6; number++) {
      var page = page(sheet, any(LANGUAGES, dice), body(dice, names, attributes, 3));
      var theirs = on(page, new StyleReference(agent));
      var ours = on(page, new PageStyles(shared, agent));
      assertSameStyles(page.getDocumentElement(), theirs, ours);
    }
  }

  private static void assertSameStyles(
      Element element, StyleReference theirs, StyleReference ours) {
    assertEquals(
        theirs.getCascadedStyle(element, false).getFingerprint(),
        ours.getCascadedStyle(element, false).getFingerprint(),
        element::getTagName);
    for (var pseudo : List.of("before", "after", "first-line")) {
      assertEquals(
          look(theirs.getPseudoElementStyle(element, pseudo)),
          look(ours.getPseudoElementStyle(element, pseudo)),
          pseudo);
    }
    for (var child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        assertSameStyles(inner, theirs, ours);
      }
    }
  }

  private static String look(CascadedStyle style) {
    return style == null ? "none" : style.getFingerprint();
  }

  private static String sheet(SplittableRandom dice) {
    var sheet = new StringBuilder("@media screen { p { margin: 9mm } }\n");
    var outers = some(SIMPLE.subList(0, SIMPLE.size() - 3), dice);
    var inners = some(SIMPLE, dice);
    for (int rule = 0; rule < 12; rule++) {
      var outer = any(outers, dice);
      var joint = any(List.of(" ", " > ", ""), dice);
      sheet.append(joint.isEmpty() ? "" : outer + joint).append(any(inners, dice));
      sheet.append(" { ").append(any(DECLARED, dice)).append("; }\n");
    }
    return sheet.append("@media print { b { margin: 2mm } }").toString().replace(">", "&gt;");
  }

  /** Few selectors a sheet, so that many of its rules match. */
  private static List<String> some(List<String> choices, SplittableRandom dice) {
    return List.of(any(choices, dice), any(choices, dice), any(choices, dice));
  }

  /** Few kinds of element, so that many look alike and stand at different places. */
  private static String body(
      SplittableRandom dice, List<String> names, List<String> attributes, int depth) {
    var body = new StringBuilder();
    for (int i = dice.nextInt(8); i >= 0; i--) {
      var name = any(names, dice);
      body.append('<').append(name).append(name.equals("a") ? " href='u'" : "");
      body.append(any(attributes, dice)).append("> text ");
      body.append(depth == 0 ? "" : body(dice, names, attributes, depth - 1));
      body.append("</").append(name).append('>');
    }
    return body.toString();
  }

  private static String any(List<String> choices, SplittableRandom dice) {
    return choices.get(dice.nextInt(choices.size()));
  }

  @Test
  void ofAnotherSheetAreOthers() {
    assertNotEquals(
        styleOfP("p { color: red }", "one").getFingerprint(),
        styleOfP("p { color: blue }", "one").getFingerprint());
  }

  private CascadedStyle styleOfP(String sheet, String words) {
    var page = page(sheet, "<p>" + words + "</p>");
    var paragraph = (Element) page.getElementsByTagName("p").item(0);
    return on(page, new PageStyles(shared, agent)).getCascadedStyle(paragraph, false);
  }

  private static final class Paper implements UserInterface {
    @Override
    public boolean isHover(Element element) {
      return false;
    }

    @Override
    public boolean isActive(Element element) {
      return false;
    }

    @Override
    public boolean isFocus(Element element) {
      return false;
    }
  }
}
