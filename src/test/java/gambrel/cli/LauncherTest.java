package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The script that starts the program, with a stand-in for Java that notes how it was called. */
class LauncherTest {
  private static final Path SHELL = Path.of("/bin/sh");
  private static final String USUAL =
      "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:MetaspaceSize=96m -Djava.awt.headless=true";

  @TempDir private Path folder;
  private Path program;
  private Path java;

  @BeforeEach
  void layProgramBesideItsJar() throws IOException {
    assumeTrue(Files.isExecutable(SHELL));
    program = Files.createDirectory(folder.resolve("a program")).toRealPath();
    Files.copy(Path.of("src/main/launcher/gambrel"), program.resolve("gambrel"));
    Files.writeString(program.resolve("gambrel.jar"), "the program");
    Files.createDirectory(program.resolve("lib"));
    java = Files.createDirectory(folder.resolve("java"));
    Files.createDirectory(java.resolve("bin"));
    Files.writeString(
        java.resolve("bin/java"),
        """
        #!/bin/sh
        echo "$@" >> '%s'
        echo "$LC_ALL" > '%s'
        for option in "$@"; do
          case $option in
            -XX:ArchiveClassesAtExit=*) echo kept > "${option#*=}" ;;
          esac
        done
        exit ${CODE:-0}
        """
            .formatted(calls(), locale()));
    Files.setPosixFilePermissions(
        java.resolve("bin/java"), PosixFilePermissions.fromString("rwx------"));
    isJava("17.0.15");
  }

  private void isJava(String version) throws IOException {
    Files.writeString(java.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
  }

  private Path locale() {
    return folder.resolve("locale.txt");
  }

  private Path calls() {
    return folder.resolve("calls.txt");
  }

  private List<String> kept() throws IOException {
    try (var files = Files.list(program)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.startsWith("."))
          .toList();
    }
  }

  /** Starts the program; returns its exit code. */
  private int start(Map<String, String> environment, String... arguments) throws Exception {
    var command = new ArrayList<>(List.of(SHELL.toString(), program.resolve("gambrel").toString()));
    command.addAll(List.of(arguments));
    var builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().keySet().removeIf(name -> name.startsWith("GAMBREL"));
    builder.environment().put("JAVA_HOME", java.toString());
    builder.environment().putAll(environment);
    var process = builder.start();
    process.getOutputStream().close();
    var said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals("", said);
    return process.waitFor();
  }

  /** Starts the program; returns the calls of Java, with the kept file as FILE. */
  private List<String> calls(String... arguments) throws Exception {
    Files.deleteIfExists(calls());
    assertEquals(0, start(Map.of(), arguments));
    return Files.readAllLines(calls()).stream()
        .map(line -> line.replaceAll("\\.run-classes-[0-9]+-[0-9]+", "FILE"))
        .map(line -> line.replaceAll("FILE\\.[0-9]+", "NEW"))
        .map(line -> line.replace(program + "/", ""))
        .toList();
  }

  private static String call(String more, String arguments) {
    return USUAL
        + " -Xlog:disable -Xlog:all=error:stderr "
        + more
        + " -jar gambrel.jar"
        + arguments;
  }

  @Test
  void theFirstRunKeepsTheLoadedClassesAndTheNextOneReadsThem() throws Exception {
    assertEquals(
        List.of(call("-XX:ArchiveClassesAtExit=NEW", " run my shop")), calls("run", "my shop"));
    assertEquals(
        List.of(call("-XX:SharedArchiveFile=FILE", " run my shop")), calls("run", "my shop"));
    assertEquals(1, kept().size());
  }

  @Test
  void aNewProgramOrANewJavaMakesANewFileAndTakesTheOldOneAway() throws Exception {
    start(Map.of(), "run", "shop");
    var first = kept();
    Files.writeString(program.resolve("gambrel.jar"), "a newer program");
    start(Map.of(), "run", "shop");
    var second = kept();
    isJava("21.0.2");
    start(Map.of(), "run", "shop");

    assertEquals(1, second.size());
    assertEquals(1, kept().size());
    assertTrue(!first.equals(second) && !second.equals(kept()));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 137})
  void aRunThatFailedKeepsNothingAndItsCodeIsReturned(int code) throws Exception {
    assertEquals(code, start(Map.of("CODE", "" + code), "run", "shop"));
    assertEquals(List.of(), kept());
  }

  @Test
  void aRunThatLeavesThingsToDoIsOneThatEndedWell() throws Exception {
    assertEquals(1, start(Map.of("CODE", "1"), "run", "shop"));
    assertEquals(1, start(Map.of("CODE", "1"), "run", "shop"));
    assertEquals(1, kept().size());
  }

  @Test
  void nothingIsKeptWhereTheFolderIsNamedAsNothingOrCannotBeWritten() throws Exception {
    start(Map.of("GAMBREL_CACHE", ""), "run", "shop");
    start(Map.of("GAMBREL_CACHE", folder.resolve("missing").toString()), "run", "shop");

    assertEquals(List.of(), kept());
    assertEquals(
        USUAL + " -jar " + program.resolve("gambrel.jar") + " run shop",
        Files.readAllLines(calls()).get(1));
  }

  @Test
  void shortCommandsKeepNothing() throws Exception {
    assertEquals(List.of(USUAL + " -jar gambrel.jar --help"), calls("--help"));
    assertEquals(List.of(USUAL + " -jar gambrel.jar check --help"), calls("check", "--help"));
    assertEquals(List.of(), kept());
  }

  @Test
  void optionsForJavaReplaceTheUsualOnes() throws Exception {
    start(Map.of("GAMBREL_JAVA", "-Xmx4g", "GAMBREL_CACHE", ""), "run", "shop");

    assertEquals(
        List.of(
            "-Xmx4g -Djava.awt.headless=true -jar " + program.resolve("gambrel.jar") + " run shop"),
        Files.readAllLines(calls()));
  }

  /** Java opens a file with an accent in its name only in a locale that has it. */
  @ParameterizedTest
  @CsvSource({"C, C.UTF-8", "POSIX, C.UTF-8", "de_AT.UTF-8, de_AT.UTF-8", "fr_FR.utf8, fr_FR.utf8"})
  void aLocaleWithoutAllLettersIsReplaced(String given, String taken) throws Exception {
    start(Map.of("LC_ALL", given), "run", "shop");

    assertEquals(taken, Files.readString(locale()).strip());
  }
}
