package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is put at the end of a file of the shop folder leaves all that stands there. */
class AdditionTest {
  private static final Addition ROW =
      new Addition("codes.csv", "code,item,step", List.of("21,rump,pack", "22,mince,pack"), "");

  @TempDir Path folder;

  private Path codes(String text) throws IOException {
    return Files.writeString(folder.resolve("codes.csv"), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "code,item,step\n20,leg,pack\n",
        "\uFEFFCode,Item,Step,description\n# mine\n",
        "code, item, step\r\n20,leg,pack\r\n"
      })
  void rowsAreAddedBelowWhatStandsThere(String before) throws IOException {
    var file = codes(before);

    assertTrue(ROW.saveIn(folder));

    assertEquals(before + "21,rump,pack\n22,mince,pack\n", Files.readString(file));
  }

  @Test
  void aLastLineWithoutAnEndIsEndedFirst() throws IOException {
    var file = codes("code,item,step\n20,leg,pack");

    assertTrue(ROW.saveIn(folder));

    assertEquals(
        "code,item,step\n20,leg,pack\n21,rump,pack\n22,mince,pack\n", Files.readString(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "code;item;step\n",
        "code,step,item\n",
        "code,item\n",
        "item,code,item,step\n",
        ""
      })
  void aTableWithOtherColumnsIsLeftAlone(String before) throws IOException {
    var file = codes(before);

    assertFalse(ROW.saveIn(folder));

    assertEquals(before, Files.readString(file));
  }

  @Test
  void aLayoutIsMadeWithItsFolder() throws IOException {
    var layout = Addition.toLayout("layouts/hall.properties", List.of("delimiter=;", "decimal=,"));

    assertTrue(layout.saveIn(folder));

    assertEquals(
        "delimiter=;\ndecimal=,\n", Files.readString(folder.resolve("layouts/hall.properties")));
  }

  @Test
  void nothingIsWrittenAmongTheExports() throws IOException {
    var layout = Addition.toLayout("exports/hall/layout.properties", List.of("decimal=,"));

    assertFalse(layout.saveIn(folder));

    assertFalse(Files.exists(folder.resolve("exports")));
  }
}
