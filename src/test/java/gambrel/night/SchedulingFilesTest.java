package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The files that a shop copies to have a run every night. */
class SchedulingFilesTest {
  private static final Path FILES = Path.of("src/main/schedule");
  private static final Path SHELL = Path.of("/bin/sh");

  @TempDir private Path folder;
  private Path note;

  @BeforeEach
  void layFolders() {
    note = folder.resolve("TO-DO.txt");
  }

  /** The output of a command and its exit code. */
  private record Ended(int code, String said) {}

  /** Runs the night's script with a program that ends with {@code code}. */
  private Ended night(int code) throws Exception {
    return script("gambrel-night", code);
  }

  private Ended script(String name, int code) throws Exception {
    assumeTrue(Files.isExecutable(SHELL));
    var program = folder.resolve("gambrel");
    Files.writeString(program, "#!/bin/sh\necho \"gambrel: said $*\" >&2\nexit " + code + "\n");
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
    var command =
        List.of(
            SHELL.toString(),
            FILES.resolve(name).toString(),
            "a shop",
            folder.resolve("re ports").toString());
    var builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("GAMBREL", program.toString());
    var process = builder.start();
    process.getOutputStream().close();
    var said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), said);
  }

  @Test
  void aNightThatLeavesNothingToDoSaysNothingAndTakesTheNoteAway() throws Exception {
    Files.writeString(note, "of last night");

    assertEquals(new Ended(0, ""), night(0));

    assertFalse(Files.exists(note));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 'Something waits for a person: see '",
    "2, 'ALARM: nothing was published, the shop folder could not be used.'",
    "3, 'ALARM: nothing was published, another run still holds '",
    "4, 'ALARM: the night failed half-way, the state of the night before stands.'",
    "137, 'ALARM: the night was broken off with code 137.'"
  })
  void everyOtherNightSaysWhatToDoAndLeavesANote(int code, String words) throws Exception {
    var ended = night(code);

    assertEquals(code, ended.code());
    assertTrue(ended.said().startsWith(words), ended.said());
    assertTrue(Files.readString(note).endsWith(ended.said()), Files.readString(note));
    assertEquals(code != 1, ended.said().contains("gambrel: said run a shop --out"), ended.said());
  }

  @ParameterizedTest
  @CsvSource({
    "0, ''",
    "1, 'Statements wait for a person. '",
    "2, 'ALARM: nothing was sent, '",
    "3, 'Nothing was sent, another run holds '",
    "4, 'ALARM: the sending stopped; the next one goes on. '",
    "137, 'ALARM: the sending was broken off with code 137.'"
  })
  void theDaysSendingSaysWhatToDoAndLeavesANote(int code, String words) throws Exception {
    note = folder.resolve("TO-SEND.txt");

    var ended = script("gambrel-send", code);

    assertEquals(code, ended.code());
    assertTrue(ended.said().startsWith(words), ended.said());
    assertEquals(code != 0, Files.exists(note));
    assertEquals(code != 0 && code != 3, ended.said().contains("gambrel: said send a shop --out"));
  }

  @Test
  void theDaysSendingMayReachTheNetworkAndTheNightMayNot() throws IOException {
    var sending = Files.readString(FILES.resolve("gambrel-send.service"));

    assertFalse(sending.contains("PrivateNetwork"));
    assertTrue(sending.contains("/gambrel-send /srv/shop"));
    assertTrue(Files.readString(FILES.resolve("gambrel.service")).contains("PrivateNetwork=yes"));
    assertTrue(Files.readString(FILES.resolve("gambrel-send.timer")).contains("Persistent=yes"));
  }

  @Test
  void theServiceTakesWhatWaitsForAPersonForNoFailureAndGivesAlarmOnAllElse() throws IOException {
    var service = Files.readString(FILES.resolve("gambrel.service"));

    assertTrue(service.contains("\nSuccessExitStatus=1\n"));
    assertTrue(service.contains("\nOnFailure=gambrel-alarm.service\n"));
    assertTrue(Files.exists(FILES.resolve("gambrel-alarm.service")));
    assertTrue(Files.readString(FILES.resolve("gambrel.timer")).contains("\nPersistent=yes\n"));
  }

  @ParameterizedTest
  @CsvSource({"gambrel-task.xml, gambrel-night.cmd", "gambrel-send-task.xml, gambrel-send.cmd"})
  void theTasksForWindowsAreWellFormedAndStartOnceADay(String file, String script)
      throws Exception {
    var factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    var task = factory.newDocumentBuilder().parse(FILES.resolve(file).toFile());
    var root = task.getDocumentElement();

    assertEquals("http://schemas.microsoft.com/windows/2004/02/mit/task", root.getNamespaceURI());
    assertEquals("Task", root.getLocalName());
    assertEquals("1", task.getElementsByTagName("DaysInterval").item(0).getTextContent());
    assertTrue(task.getElementsByTagName("Command").item(0).getTextContent().endsWith(script));
    var policy = task.getElementsByTagName("MultipleInstancesPolicy").item(0).getTextContent();
    assertEquals("IgnoreNew", policy);
  }

  @ParameterizedTest
  @ValueSource(strings = {"gambrel-night.cmd", "gambrel-send.cmd"})
  void theScriptsForWindowsHaveWordsForEveryExitCodeAndPassItOn(String name) throws IOException {
    var script = Files.readString(FILES.resolve(name));

    for (int code = 1; code <= 4; code++) {
      assertTrue(script.contains("if %CODE%==" + code + " set \"WORDS="), "code " + code);
    }
    assertTrue(script.stripTrailing().endsWith("exit /b %CODE%"));
    assertFalse(Pattern.compile("(?<!\r)\n").matcher(script).find(), "lines end as Windows wants");
  }
}
