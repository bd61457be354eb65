package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.template.Templates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplateGuideTest {
  private static final Path FOLDER = SampleWords.FOLDER;
  private static final Pattern RECIPE = Pattern.compile("```([\\w.]+)\n(.*?)```", Pattern.DOTALL);

  @TempDir private Path own;

  private static String guide() throws IOException {
    return Files.readString(Path.of("src/site/markdown/templates.md"));
  }

  private static Map<String, List<String>> recipes() throws IOException {
    var recipes = new LinkedHashMap<String, List<String>>();
    RECIPE
        .matcher(guide())
        .results()
        .forEach(recipe -> recipes.put(recipe.group(1), recipe.group(2).lines().toList()));
    return recipes;
  }

  private PageReader print() {
    var renderer = new PageRenderer(Templates.of(own));
    return PageReader.of(Preview.render(renderer, SampleBeef.full()));
  }

  private void follow(String file) throws IOException {
    var lines = recipes().get(file);
    var text = Files.readString(FOLDER.resolve(file));
    assertTrue(text.contains(lines.get(0)), lines.get(0));
    Files.writeString(own.resolve(file), text.replace(lines.get(0), lines.get(1)));
  }

  @Test
  void namesEveryFile() throws IOException {
    var guide = guide();
    try (var files = Files.list(FOLDER)) {
      for (var name : files.map(file -> file.getFileName().toString()).toList()) {
        assertTrue(
            name.equals("README.md") || name.startsWith("summary-") || guide.contains(name), name);
      }
    }
  }

  @Test
  void namesOnlyWordsAndCutsThatThereAre() throws IOException {
    for (var file : List.of("words_en.properties", "cuts_de.properties")) {
      for (var line : recipes().get(file)) {
        var key = line.substring(0, line.indexOf('=') + 1);
        assertTrue(("\n" + Files.readString(FOLDER.resolve(file))).contains("\n" + key), key);
      }
    }
  }

  @Test
  void leavesASectionOut() throws IOException {
    var keeping = SampleWords.ENGLISH.say("keeping");
    assertTrue(print().prints(keeping));
    follow("statement.ftlh");
    assertFalse(print().prints(keeping));
  }

  @Test
  void addsALineUnderTheName() throws IOException {
    follow("parts.ftlh");
    assertTrue(print().prints("Butchers since 1962"));
  }

  @Test
  void changesAColourAndNothingElse() throws IOException {
    var before = print().all();
    follow("page.css");
    assertEquals(before, print().all());
  }

  @Test
  void isNoTemplate() {
    assertNull(PageRenderer.class.getResource("/gambrel/templates/README.md"));
    assertNull(PageRenderer.class.getResource("/gambrel/templates/guide.png"));
  }
}
