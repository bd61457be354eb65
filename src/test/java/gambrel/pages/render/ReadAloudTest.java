package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.lowagie.text.Document;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfWriter;
import gambrel.pages.render.Desk.Named;
import gambrel.pages.render.pdf.Attachment;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a program that reads a page aloud is told about it. */
class ReadAloudTest {
  private static final Attachment FIGURES =
      new Attachment("f.csv", "text/csv", "Figures", "a,b\n".getBytes(StandardCharsets.UTF_8));

  @TempDir Path folder;
  private Desk desk;

  @BeforeEach
  void open() {
    desk = new Desk(folder);
  }

  private List<String> structure(String body) {
    var pdf = desk.render(body, new Named("rump"));
    assertEquals(List.of(), Validator.faults(pdf));
    try (var reader = new PdfReader(pdf)) {
      var lines = new ArrayList<String>();
      var root = reader.getCatalog().getAsDict(PdfName.STRUCTTREEROOT);
      read((PdfDictionary) kids(root).get(0), "", lines);
      return lines;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One line an element: its type within its parents', its words if it is a figure, its marks. */
  private static void read(PdfDictionary element, String within, List<String> lines) {
    var type = within + element.getAsName(PdfName.S).toString().substring(1);
    var words = element.getAsString(new PdfName("Alt"));
    var kids = kids(element);
    lines.add(
        type
            + (words == null ? "" : " \"" + words.toUnicodeString() + "\"")
            + (kids.isEmpty() ? scope(element) : ""));
    kids.forEach(kid -> read((PdfDictionary) kid, type + " ", lines));
  }

  private static String scope(PdfDictionary element) {
    var attributes = element.getAsDict(new PdfName("A"));
    var scope = attributes == null ? null : attributes.getAsName(new PdfName("Scope"));
    return scope == null ? "" : " of " + scope.toString().substring(1);
  }

  private static List<Object> kids(PdfDictionary element) {
    var kids = new ArrayList<Object>();
    if (element.getDirectObject(PdfName.K) instanceof PdfArray array) {
      for (var i = 0; i < array.size(); i++) {
        if (array.getDirectObject(i) instanceof PdfDictionary kid && kid.contains(PdfName.S)) {
          kids.add(kid);
        }
      }
    } else if (element.getDirectObject(PdfName.K) instanceof PdfDictionary kid
        && kid.contains(PdfName.S)) {
      kids.add(kid);
    }
    return kids;
  }

  @Test
  void theValidatorFindsFaultInAPlainFile() {
    var bytes = new ByteArrayOutputStream();
    var plain = new Document();
    PdfWriter.getInstance(plain, bytes);
    plain.open();
    plain.add(new Paragraph("Rump"));
    plain.close();

    assertFalse(Validator.faults(bytes.toByteArray()).isEmpty());
  }

  @Test
  void headingsAndParagraphsAreCalledSo() {
    assertEquals(
        List.of("Document", "Document H1", "Document P"),
        structure("<h1>Where did it go?</h1><p>Into <b>boxes</b> and bins.</p>"));
  }

  @Test
  void aBlockOfNothingButTextIsAParagraphAndOneOfBlocksAGroup() {
    assertEquals(
        List.of("Document", "Document Div", "Document Div P", "Document Div P"),
        structure("<div><div>Hot</div><div>Cold</div></div>"));
  }

  @Test
  void textBetweenBlocksIsAParagraphOfItsOwn() {
    assertEquals(
        List.of("Document", "Document Div", "Document Div P", "Document Div P"),
        structure("<div>Hot <p>Cold</p></div>"));
  }

  @Test
  void aTableTellsItsHeadsAndItsEmptyCells() {
    assertEquals(
        List.of(
            "Document",
            "Document Table",
            "Document Table THead",
            "Document Table THead TR",
            "Document Table THead TR TH of Column",
            "Document Table THead TR TH of Column",
            "Document Table TBody",
            "Document Table TBody TR",
            "Document Table TBody TR TH of Row",
            "Document Table TBody TR TD"),
        structure(
            "<table><thead><tr><th></th><th>kg</th></tr></thead>"
                + "<tbody><tr><th>Rump</th><td></td></tr></tbody></table>"));
  }

  @Test
  void aTableThatOnlyPlacesThingsIsNoTable() {
    assertEquals(
        List.of("Document", "Document Div", "Document Div Div", "Document Div Div P"),
        structure("<table role='presentation'><tr><td>Shop</td><td></td></tr></table>")
            .subList(0, 4));
  }

  @Test
  void theHeadOfATableIsReadOnceHoweverManyPagesItRepeatsOn() {
    var rows = "<tr><td>1</td></tr>".repeat(120);

    var structure =
        structure(
            "<table style='-fs-table-paginate: paginate'><thead><tr><th>kg</th></tr></thead><tbody>"
                + rows
                + "</tbody></table>");

    assertEquals(1, structure.stream().filter(line -> line.endsWith("TH of Column")).count());
    assertEquals(120, structure.stream().filter(line -> line.endsWith("TD")).count());
  }

  @Test
  void runningHeadsAndPageNumbersAreNotRead() {
    assertEquals(
        List.of("Document", "Document P"),
        structure(
            "<style>@page { @top-left { content: element(h) } @bottom-right { content: counter(page) } }"
                + "</style><div style='position: running(h)'>Shop</div><p>Rump</p>"));
  }

  @Test
  void aDrawingIsReadByItsTitleInItsPlace() {
    assertEquals(
        List.of("Document", "Document P", "Document Figure \"Shrink\"", "Document P"),
        structure(
            "<p>Before</p><svg style='display: block' viewBox='0 0 9 9'><title>Shrink</title>"
                + "<rect width='9' height='9'/></svg><p>After</p>"));
  }

  @Test
  void aDrawingWithoutATitleIsDecoration() {
    assertEquals(
        List.of("Document", "Document P"),
        structure(
            "<svg style='display: block' viewBox='0 0 9 9'><rect width='9' height='9'/></svg>"
                + "<p>After</p>"));
  }

  @Test
  void listsAreListsAndTheirBulletsAreNotRead() {
    assertEquals(
        List.of(
            "Document",
            "Document L",
            "Document L LI",
            "Document L LI LBody",
            "Document L LI",
            "Document L LI LBody"),
        structure("<ul><li>A scale</li><li>A tub</li></ul>"));
  }

  @Test
  void aDraftWithAttachmentsIsSoundToo() {
    var body =
        "<p style='background-color: #ccc; text-decoration: underline'>${name}</p><hr/>"
            + "<table style='border-collapse: collapse'><tr><td style='border: 1pt solid'>1</td></tr>"
            + "</table>";

    var pdf = desk.render(body, new Named("rump"), Desk.INFO.withWatermark("DRAFT"), FIGURES);

    assertEquals(List.of(), Validator.faults(pdf));
  }
}
