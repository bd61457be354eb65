package gambrel.files.guess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.guess.FormatCase.Outcome;
import gambrel.files.guess.FormatCase.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A person who has never seen the program gets from a strange export to a right night by what
 * {@code check} prints, and never to a wrong one without being told.
 *
 * <p>What {@code check} said of each format stands in {@code target/formats} after the test.
 */
class FormatsTest {
  private static final Path PRINTED = Path.of("target/formats");

  /** The formats that are not yet read right, and why. Of each of them the user is told. */
  private static final Map<String, String> NOT_YET_RIGHT =
      Map.of(
          "eyes-key-values", "each cell has its name before it",
          "later-keys-and-values", "each cell has its name before it",
          "then-twelve-hours-without-a-mark", "morning and afternoon look the same",
          "then-two-lines-each", "a weighing is printed on two lines");

  private static final List<Result> RESULTS = new ArrayList<>();

  @BeforeAll
  static void followEveryFormat(@TempDir Path work) throws Exception {
    Files.createDirectories(PRINTED);
    for (var folder : FormatCase.all()) {
      String name = folder.getFileName().toString();
      var format = new FormatCase(folder, work.resolve(name));
      RESULTS.add(format.follow());
      Files.writeString(PRINTED.resolve(name + ".txt"), format.printed());
    }
    Files.writeString(PRINTED.resolve("outcomes.txt"), table(result -> true));
    System.out.println(table(result -> true));
  }

  private static String table(Predicate<Result> which) {
    return RESULTS.stream()
        .filter(which)
        .map(r -> "%-36s %-18s %s".formatted(r.name(), r.outcome(), r.reason()).strip())
        .collect(Collectors.joining("\n", "\n", "\n"));
  }

  @Test
  void noFormatIsReadWrongInSilence() {
    assertEquals("\n\n", table(result -> result.outcome() == Outcome.WRONG_SILENTLY));
  }

  @Test
  void eightOfTenAreRightAsProposed() {
    long right = RESULTS.stream().filter(r -> r.outcome() == Outcome.RIGHT_AS_PROPOSED).count();
    assertTrue(
        right * 10 >= RESULTS.size() * 8L,
        () -> table(result -> result.outcome() != Outcome.RIGHT_AS_PROPOSED));
  }

  @Test
  void allButTheNamedOnesAreRightAfterTwoAnswers() {
    var wrong = RESULTS.stream().filter(r -> !r.isRight()).map(Result::name).toList();
    assertEquals(
        new TreeSet<>(NOT_YET_RIGHT.keySet()),
        new TreeSet<>(wrong),
        () -> table(result -> !result.isRight()));
  }

  @Test
  void noFormatNeedsMoreThanTwoAnswers() throws IOException {
    for (var folder : FormatCase.all()) {
      var answers = folder.resolve("edits.txt");
      assertTrue(
          !Files.exists(answers) || Files.readAllLines(answers).size() <= 2, answers::toString);
    }
  }
}
