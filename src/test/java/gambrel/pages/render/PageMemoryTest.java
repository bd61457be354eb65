package gambrel.pages.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import gambrel.pages.render.Desk.Named;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.pdf.DocumentInfo;
import gambrel.pages.render.template.TemplateFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageMemoryTest {
  private static final Attachment FIGURES = new Attachment("f.csv", "text/csv", "", new byte[] {1});

  @TempDir Path folder;
  private final Map<String, byte[]> pages = new HashMap<>();
  private final PageMemory memory =
      (recipe, maker) -> pages.computeIfAbsent(recipe, r -> maker.get());

  private Desk desk;

  @BeforeEach
  void open() {
    desk = new Desk(folder);
    desk.put("page.ftlh", "<html><head></head><body><p>${name}</p></body></html>");
  }

  private byte[] make(String program, String name, DocumentInfo info, Attachment... attachments) {
    return new PageRenderer(desk.templates())
        .remembering(memory, program)
        .render("page.ftlh", new Named(name), info, List.of(attachments));
  }

  @Test
  void isTakenInsteadOfMadeAgain() {
    var first = make("1.0", "rump", Desk.INFO);

    assertSame(first, make("1.0", "rump", Desk.INFO));
  }

  @Test
  void isTheSameAsOneThatNobodyRemembers() {
    assertArrayEquals(
        new PageRenderer(desk.templates())
            .render("page.ftlh", new Named("rump"), Desk.INFO, List.of()),
        make("1.0", "rump", Desk.INFO));
  }

  @Test
  void isNotTakenWhereAnythingIsDifferent() {
    make("1.0", "rump", Desk.INFO);
    make("1.1", "rump", Desk.INFO);
    make("1.0", "chuck", Desk.INFO);
    make("1.0", "rump", Desk.INFO.withWatermark("DRAFT"));
    make("1.0", "rump", Desk.INFO, FIGURES);

    assertEquals(5, pages.size());
  }

  @Test
  void isNotTakenWhereProgramOrTemplatesAreDifferent() throws IOException {
    var program = Files.writeString(folder.resolve("program.jar"), "1");
    var templates = Optional.of(Files.createDirectory(folder.resolve("own")));
    var before = TemplateFiles.digest(program, templates);

    Files.writeString(folder.resolve("own/page.css"), "p { }");
    var styled = TemplateFiles.digest(program, templates);
    Files.writeString(program, "2");
    var upgraded = TemplateFiles.digest(program, templates);

    assertNotEquals(before, styled);
    assertNotEquals(styled, upgraded);
  }
}
