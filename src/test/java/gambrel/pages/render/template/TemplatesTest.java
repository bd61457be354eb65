package gambrel.pages.render.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.Desk;
import gambrel.pages.render.Desk.Named;
import gambrel.pages.render.template.TemplateProblem.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {

  @TempDir Path folder;
  private Desk desk;

  /** What a view may hold. */
  public record View(
      Named owner,
      List<Named> cuts,
      Map<String, String> words,
      boolean held,
      int packs,
      Optional<String> note,
      Kind kind) {
    /** Not a component, so not for templates. */
    public String secret() {
      return "secret";
    }
  }

  /** A choice of a view. */
  public enum Kind {
    BEEF
  }

  /** A view that holds what it may not. */
  public record Held(LocalDate name) {}

  private static final View VIEW =
      new View(
          new Named("Smith & Sons"),
          List.of(new Named("rump"), new Named("chuck")),
          Map.of("total", "Total"),
          true,
          1234567,
          Optional.empty(),
          Kind.BEEF);

  @BeforeEach
  void open() {
    desk = new Desk(folder);
  }

  private String fill(String template) {
    return desk.put("t.ftlh", template).templates().fill("t.ftlh", VIEW);
  }

  @Test
  void recordsListsMapsFlagsAndNumbersAreReadByName() {
    assertEquals(
        "rump chuck Total yes 1234567 BEEF",
        fill(
            "<#list cuts as c>${c.name} </#list>${words.total} <#if held>yes</#if> ${packs}"
                + " ${kind}"));
  }

  @Test
  void textIsEscapedWhateverTheFileIsCalled() {
    desk.put("part.ftl", "${owner.name}").put("part", "${owner.name}");

    assertEquals("Smith &amp; Sons", fill("${owner.name}"));
    assertEquals("Smith &amp; Sons", fill("<#include 'part.ftl'>"));
    assertEquals("Smith &amp; Sons", fill("<#include 'part'>"));
  }

  @Test
  void anEmptyOptionalIsAMissingValue() {
    assertEquals("none", fill("<#if note??>${note}<#else>none</#if>"));
    assertEquals(Map.of("name", "note"), assertProblem("${note}").values());
  }

  @Test
  void aMissingNameIsToldWithTemplateLineAndColumn() {
    var problem = assertProblem("<p>\n  ${owner.nmae}</p>");

    assertEquals("t.ftlh", problem.template());
    assertEquals(2, problem.line());
    assertEquals(5, problem.column());
    assertEquals(Fault.NO_NAME, problem.fault());
    assertEquals(Map.of("name", "owner.nmae"), problem.values());
  }

  @Test
  void aMissingNameInAnIncludedFileIsToldWithThatFile() {
    desk.put("part.ftlh", "\n\n${nobody}");

    var problem = assertProblem("<#include 'part.ftlh'>");

    assertEquals("part.ftlh", problem.template());
    assertEquals(3, problem.line());
  }

  @Test
  void aMistakeInTheTemplateLanguageIsToldWithItsPlace() {
    var problem = assertProblem("one\n<#list cuts as c>${c.name}");

    assertEquals("t.ftlh", problem.template());
    assertEquals(2, problem.line());
  }

  @Test
  void missingFilesAreNamed() {
    var included = assertProblem("<#include 'other.ftlh'>");
    assertEquals(Fault.NO_FILE, included.fault());
    assertEquals(Map.of("file", "other.ftlh"), included.values());
    var templates = desk.templates();
    var problem = assertThrows(TemplateProblem.class, () -> templates.fill("no.ftlh", VIEW));
    assertEquals(Fault.NO_FILE, problem.fault());
    assertEquals(Map.of("file", "no.ftlh"), problem.values());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${owner.class}",
        "${owner.getClass()}",
        "${owner.getClass().getName()}",
        "${owner.hashCode()}",
        "${owner.toString()}",
        "${secret}",
        "${secret()}",
        "${owner}",
        "${owner?api.name()}",
        "${words?api.size()}",
        "${'freemarker.template.utility.Execute'?new()('id')}",
        "${'freemarker.template.utility.ObjectConstructor'?new()('java.io.File')}",
        "<#include '/etc/passwd'>",
        "<#include '../../outside.ftlh'>",
        "<#include 'file:/etc/passwd'>",
        "${.now}",
        "<#if .now?string('yyyy') == '2026'></#if>",
        "${.data_model.owner.class}"
      })
  void whatLiesOutsideTheViewCannotBeReached(String template) throws IOException {
    Files.writeString(folder.resolveSibling("outside.ftlh"), "outside");

    assertProblem(template);
  }

  @Test
  void aTypeThatTemplatesCannotReadIsNamed() {
    var templates = desk.put("t.ftlh", "${name}").templates();
    var view = new Held(LocalDate.of(2026, 3, 1));

    var problem = assertThrows(TemplateProblem.class, () -> templates.fill("t.ftlh", view));

    assertTrue(problem.values().get("message").contains("LocalDate"), problem.getMessage());
  }

  @Test
  void theShopsOwnFileStandsBeforeTheBuiltInOne() {
    assertEquals("mine", fill("mine"));
    assertTrue(Templates.builtIn().files().bytes("t.ftlh").isEmpty());
  }

  @Test
  void aFileIsReadOnceSoThatOneNightUsesOneVersion() {
    var templates = desk.put("t.ftlh", "first").templates();
    templates.fill("t.ftlh", VIEW);
    desk.put("t.ftlh", "second");

    assertEquals("first", templates.fill("t.ftlh", VIEW));
  }

  @Test
  void aByteOrderMarkIsNotPartOfThePage() {
    assertEquals("page", fill("\uFEFFpage"));
  }

  @Test
  void aFileThatIsNotUtf8IsAProblem() {
    desk.put("t.ftlh", "M\u0101ori caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
    var templates = desk.templates();

    var problem = assertThrows(TemplateProblem.class, () -> templates.fill("t.ftlh", VIEW));

    assertEquals(Fault.NOT_UTF8, problem.fault());
  }

  @Test
  void aLinkOutOfTheFolderIsNoTemplate(@TempDir Path elsewhere) throws IOException {
    var outside = Files.writeString(elsewhere.resolve("outside.css"), "p {}");
    Files.createSymbolicLink(folder.resolve("link.css"), outside);

    assertTrue(desk.templates().files().bytes("link.css").isEmpty());
  }

  @Test
  void aPageThatGrowsWithoutEndIsStopped() {
    var problem = assertProblem("<#list 1.. as i>${'x'?left_pad(1000)}</#list>");

    assertEquals(Fault.TOO_LONG, problem.fault());
  }

  @Test
  void aWordThatLooksLikeTheClockIsNoProblem() {
    assertFalse(fill("${words.total} .now").isEmpty());
  }

  private TemplateProblem assertProblem(String template) {
    desk.put("t.ftlh", template);
    var templates = desk.templates();
    return assertThrows(TemplateProblem.class, () -> templates.fill("t.ftlh", VIEW));
  }
}
