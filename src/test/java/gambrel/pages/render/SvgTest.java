package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.Desk.Named;
import gambrel.pages.render.svg.SvgBox;
import gambrel.pages.render.svg.SvgDrawing;
import gambrel.pages.render.svg.SvgReader;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {

  @TempDir Path folder;

  private static SvgDrawing read(String content) {
    var svg = "<svg viewBox='0 0 100 50'>" + content + "</svg>";
    return SvgReader.read("chart.ftlh", XhtmlParser.parse("chart.ftlh", svg).getDocumentElement());
  }

  private static SvgDrawing.Shape shape(String content) {
    return (SvgDrawing.Shape) read(content).marks().get(0);
  }

  @Test
  void wordsInADrawingAreTextOfThePdf() {
    var pdf =
        new Desk(folder)
            .render(
                "<svg viewBox='0 0 200 50'><text x='10' y='20'>M\u0101ori ${name}</text></svg>",
                new Named("rump"));

    assertTrue(Desk.text(pdf).contains("M\u0101ori rump"), Desk.text(pdf));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "<rect x='1' y='2' width='3' height='4'/>; 1 2 3 4",
        "<circle cx='10' cy='10' r='4'/>; 6 6 8 8",
        "<line x1='1' y1='2' x2='5' y2='9'/>; 1 2 4 7",
        "<polyline points='0,0 4,0 4,3'/>; 0 0 4 3",
        "<g><rect x='10' y='20' width='1' height='2'/></g>; 10 20 1 2"
      })
  void shapesLieWhereTheirAttributesSay(String content, String bounds) {
    var box = shape(content).outline().getBounds2D();
    var expected = bounds.split(" ", -1);

    assertEquals(Double.parseDouble(expected[0]), box.getX(), 1e-9);
    assertEquals(Double.parseDouble(expected[1]), box.getY(), 1e-9);
    assertEquals(Double.parseDouble(expected[2]), box.getWidth(), 1e-9);
    assertEquals(Double.parseDouble(expected[3]), box.getHeight(), 1e-9);
  }

  @Test
  void aMarkInheritsWhatItDoesNotSet() {
    var style =
        shape("<g fill='#f00' stroke='navy'><rect stroke='none' width='1' height='1'/></g>")
            .style();

    assertEquals(Optional.of(Color.RED), style.fill());
    assertEquals(Optional.empty(), style.stroke());
  }

  @Test
  void sizeComesFromTheAttributesElseFromTheView() {
    assertEquals(new Rectangle2D.Double(0, 0, 100, 50), read("").view());
    assertEquals(100, read("").width());
  }

  @Test
  void titlesAreNotDrawn() {
    assertTrue(read("<title>Chart of shrink</title><desc>months</desc>").marks().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '^',
      value = {
        "<ellipse rx='3'/>; ELEMENT; {element=ellipse}",
        "<path d='M1 1L4 1'/>; ELEMENT; {element=path}",
        "<polygon points='1 1, 5 1, 5 7'/>; ELEMENT; {element=polygon}",
        "<image href='x.png'/>; ELEMENT; {element=image}",
        "<script>x()</script>; ELEMENT; {element=script}",
        "<foreignObject/>; ELEMENT; {element=foreignObject}",
        "<use href='#a'/>; ELEMENT; {element=use}",
        "<text x='1'>a<tspan>b</tspan></text>; INSIDE_TEXT; {element=tspan}",
        "loose words; LOOSE_TEXT; {text=loose words}"
      })
  void anElementThatCannotBeDrawnIsAProblem(String content, Fault fault, String values) {
    var problem = assertThrows(TemplateProblem.class, () -> read(content));

    assertEquals("chart.ftlh", problem.template());
    assertEquals(fault, problem.fault());
    assertEquals(values, problem.values().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<rect width='1,5' height='2'/>",
        "<rect width='NaN' height='2'/>",
        "<rect width='50%' height='2'/>",
        "<rect style='fill:red' width='1' height='2'/>",
        "<rect onclick='x()' width='1' height='2'/>",
        "<rect fill='url(#g)' width='1' height='2'/>",
        "<g transform='translate(3 4)'/>",
        "<rect rx='1' width='1' height='2'/>",
        "<polyline points='1 2 3'/>"
      })
  void aValueThatCannotBeDrawnIsAProblemThatNamesIt(String content) {
    var problem = assertThrows(TemplateProblem.class, () -> read(content));

    assertEquals(Fault.ATTRIBUTE, problem.fault());
    assertTrue(content.contains(problem.values().get("attribute") + "='"), problem.getMessage());
    assertTrue(content.contains("<" + problem.values().get("element")), problem.getMessage());
  }

  @Test
  void aProblemInADrawingStopsThePage() {
    var desk = new Desk(folder);
    var view = new Named("rump");

    var problem =
        assertThrows(
            TemplateProblem.class,
            () -> desk.render("<svg viewBox='0 0 9 9'><blink/></svg>", view));

    assertEquals("page.ftlh", problem.template());
    assertEquals(Fault.ELEMENT, problem.fault());
    assertEquals(Map.of("element", "blink"), problem.values());
  }

  @Test
  void drawingsKeepTheirProportionsWhenTheStyleSheetGivesOneSide() {
    var box = SvgBox.of(read(""), 600, -1, 20);

    assertEquals(600, box.getIntrinsicWidth());
    assertEquals(300, box.getIntrinsicHeight());
    assertFalse(box.hasBaseline());
  }
}
