package gambrel.files.guess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.guess.FormatCase.Counted;
import gambrel.night.Inputs;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.weighing.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The formats of {@link FormatsTest} in a shop that has just been started: neither its scales nor
 * its codes are known. The user follows {@code check --save}, knows the right answer to each
 * question, and puts it where {@code check} says.
 *
 * <p>What {@code check} said of each format stands in {@code target/newcomer} after the test.
 */
class NewcomerTest {
  private static final Path PRINTED = Path.of("target/newcomer");

  /** The formats that are told and not read, as in {@link FormatsTest}. */
  private static final List<String> NOT_YET_RIGHT =
      List.of(
          "eyes-key-values",
          "later-keys-and-values",
          "then-twelve-hours-without-a-mark",
          "then-two-lines-each");

  private static final Pattern ANSWERS_GO =
      Pattern.compile("exports/.* Put the lines of the right answers at the end of (\\S.*)\\.");
  private static final String QUESTION = "  \\d+\\. To be answered: .*";
  private static final String SETTING = "[a-z]+(\\.[^ =]+)*(\\.\\S.*)?=.*";
  private static final int MOST_ANSWERS = 48;

  /** By format what is wrong at the end, and how often {@code check} was called. */
  private static final Map<String, Outcome> OUTCOMES = new HashMap<>();

  /**
   * @param wrong the first weighing that is missing or too much; empty if there is none
   * @param isOpen whether something is asked, or set aside, or stops the night
   * @param isTold whether there is any notice but for bodies whose weights are not all there
   */
  private record Outcome(String wrong, boolean isOpen, boolean isTold, int checks) {}

  /** A question and where its answers, each of some lines, are to be put. */
  private record Asked(String file, List<List<String>> answers) {}

  @BeforeAll
  static void beginEveryFormat(@TempDir Path work) throws Exception {
    Files.createDirectories(PRINTED);
    for (var folder : FormatCase.all()) {
      String name = folder.getFileName().toString();
      OUTCOMES.put(name, new NewcomerTest().begin(folder, work.resolve(name)));
    }
  }

  @Test
  void noFormatIsReadWrongInSilence() {
    assertEquals(Map.of(), which(outcome -> !outcome.wrong().isEmpty() && !outcome.isTold()));
  }

  @Test
  void allButTheNamedOnesAreRight() {
    var wrong = which(outcome -> !outcome.wrong().isEmpty() || outcome.isOpen());
    assertEquals(new TreeSet<>(NOT_YET_RIGHT), new TreeSet<>(wrong.keySet()), wrong::toString);
  }

  /** One that saves, one after the answers, one after the codes. */
  @Test
  void threeChecksAreEnough() {
    var more = which(outcome -> outcome.checks() > 3);
    more.keySet().removeAll(NOT_YET_RIGHT);
    assertTrue(more.isEmpty(), more::toString);
  }

  private static Map<String, Outcome> which(Predicate<Outcome> of) {
    return OUTCOMES.entrySet().stream()
        .filter(entry -> of.test(entry.getValue()))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  private FormatCase format;
  private Path shop;
  private int checks;

  private Outcome begin(Path folder, Path work) throws Exception {
    shop = work.resolve("shop");
    format = new FormatCase(folder, shop);
    format.copy(FormatCase.TOP.resolve("base"));
    format.copy(folder);
    format.renameAsAnswered();
    Files.writeString(shop.resolve("codes.csv"), "code,item,step,description,nominal\n");
    Files.writeString(shop.resolve("scales.csv"), "scale,unit,division,where,capacity\n");
    String said = check("--save");
    for (var asked = asked(said); !asked.isEmpty() && checks < 6; asked = asked(said)) {
      answer(shop, asked, best(asked, work.resolve("tried")));
      addScales(shop, said);
      said = check();
      addScales(shop, said);
    }
    addScales(shop, said);
    addCodes(shop);
    said = check();
    Files.writeString(PRINTED.resolve(folder.getFileName() + ".txt"), format.printed());
    var notices =
        said.lines()
            .filter(line -> line.matches("(stop|hold|mark|note) .*|" + QUESTION))
            .filter(line -> !line.startsWith("hold held "))
            .toList();
    boolean isOpen = notices.stream().anyMatch(line -> !line.matches("(mark|note) .*"));
    return new Outcome(wrong(shop), isOpen, !notices.isEmpty(), checks);
  }

  private String check(String... options) {
    checks++;
    return format.check(options);
  }

  /** The questions that {@code check} printed. A row stands below each, and below each answer. */
  private static List<Asked> asked(String said) {
    var all = new ArrayList<Asked>();
    String file = "";
    boolean isNext = false;
    for (String line : said.lines().toList()) {
      var goes = ANSWERS_GO.matcher(line);
      if (goes.matches()) {
        file = goes.group(1);
      } else if (line.matches(QUESTION)) {
        all.add(new Asked(file, new ArrayList<>()));
        isNext = true;
      } else if (all.isEmpty() || !line.startsWith("    ")) {
        file = line.startsWith("exports/") ? "" : file;
      } else if (line.startsWith("      = ")) {
        isNext = true;
      } else if (!file.isEmpty() && line.substring(4).matches(SETTING)) {
        var answers = all.get(all.size() - 1).answers();
        String key = key(line.substring(4));
        boolean isAgain =
            !answers.isEmpty()
                && answers.get(answers.size() - 1).stream().anyMatch(l -> key(l).equals(key));
        if (isNext || isAgain) {
          answers.add(new ArrayList<>());
        }
        answers.get(answers.size() - 1).add(line.substring(4));
        isNext = false;
      }
    }
    return all;
  }

  private static String key(String setting) {
    return setting.replaceFirst("=.*", "");
  }

  /** Which answers, counted through, come nearest to what the exports mean. */
  private int best(List<Asked> asked, Path tried) throws Exception {
    int all = asked.stream().mapToInt(of -> of.answers().size()).reduce(1, (a, b) -> a * b);
    int best = 0;
    long fewest = Long.MAX_VALUE;
    for (int which = 0; which < Math.min(all, MOST_ANSWERS); which++) {
      var to = tried.resolve("" + which);
      new FormatCase(shop, to).copy(shop);
      answer(to, asked, which);
      var scales = scales(Inputs.read(to, Progress.NONE), to);
      Files.writeString(to.resolve("scales.csv"), "scale,division\n" + scales);
      addCodes(to);
      var ledger = format.ledger(Inputs.read(to, Progress.NONE));
      long wrong = difference(ledger).size() * 10L + ledger.setAside().size();
      if (wrong < fewest) {
        best = which;
        fewest = wrong;
      }
    }
    return best;
  }

  /** Rows for all scales that rows or folders name. */
  private static String scales(Inputs inputs, Path shop) throws IOException {
    var names = new TreeSet<String>();
    for (var file : inputs.exports()) {
      file.rows().forEach(row -> names.add(row.get(Field.SCALE)));
    }
    try (var folders = Files.list(shop.resolve("exports"))) {
      folders.forEach(folder -> names.add(folder.getFileName().toString()));
    }
    return names.stream()
        .filter(name -> !name.isEmpty())
        .map(name -> name + ",0.001\n")
        .collect(Collectors.joining());
  }

  private static void answer(Path shop, List<Asked> asked, int which) throws IOException {
    int left = which;
    for (var of : asked) {
      var lines = of.answers().get(left % of.answers().size());
      left /= of.answers().size();
      var file = shop.resolve(of.file());
      var all = Files.exists(file) ? Files.readAllLines(file) : List.<String>of();
      // Of this line the question says that it takes the place of another one.
      boolean isInstead = lines.get(0).startsWith("ignore=");
      Files.createDirectories(file.getParent());
      Files.write(
          file, all.stream().filter(line -> !isInstead || !line.startsWith("ignore=")).toList());
      Files.write(file, lines, StandardOpenOption.APPEND);
    }
  }

  /** Adds the scales that {@code check} prints; a step that it leaves open is a gram. */
  private static void addScales(Path shop, String said) throws IOException {
    var file = shop.resolve("scales.csv");
    var rows =
        said.lines()
            .dropWhile(line -> !line.startsWith("scales.csv lacks these scales"))
            .skip(1)
            .takeWhile(line -> line.startsWith("    "))
            .map(row -> row.strip().replace("UNIT", "").replace("DIVISION", "0.001"))
            .toList();
    var known = Files.readAllLines(file);
    Files.write(
        file,
        rows.stream().filter(row -> !known.contains(row)).toList(),
        StandardOpenOption.APPEND);
  }

  /** Makes every code one that is read and means nothing. */
  private static void addCodes(Path shop) throws Exception {
    var file = shop.resolve("codes.csv");
    Files.writeString(file, "code,item,step,description,nominal\n");
    var inputs = Inputs.read(shop, Progress.NONE);
    var known = CodeIndex.of(inputs.shop());
    var rows = new TreeSet<String>();
    for (var export : inputs.exports()) {
      export.rows().stream()
          .map(row -> row.get(Field.CODE))
          .filter(code -> !code.isEmpty() && known.find(code).isEmpty())
          .forEach(code -> rows.add('"' + code.replace("\"", "\"\"") + "\",,other"));
    }
    Files.write(file, rows, StandardOpenOption.APPEND);
  }

  /** The first weighing that is missing or too much; empty if there is none. */
  private String wrong(Path of) throws Exception {
    var difference = difference(format.ledger(Inputs.read(of, Progress.NONE)));
    return difference.isEmpty() ? "" : difference.size() + ": " + difference.get(0);
  }

  /**
   * The weighings that are missing or too many. Which column has the codes shows in that each code
   * always goes with the same one of the case.
   */
  private List<String> difference(Ledger ledger) throws IOException {
    var counted = FormatCase.counted(ledger);
    var meant = new HashMap<String, String>();
    var difference = new ArrayList<String>();
    for (var expected : format.expected()) {
      var met = counted.stream().filter(expected::isButForNames).toList();
      var own = met.stream().filter(c -> isOf(expected, c, meant)).findFirst();
      own.ifPresentOrElse(counted::remove, () -> difference.add("not counted " + expected));
      own.ifPresent(c -> meant.put(c.code(), expected.code()));
    }
    counted.forEach(more -> difference.add("too many " + more));
    return difference;
  }

  private static boolean isOf(Counted expected, Counted counted, Map<String, String> meant) {
    return meant.getOrDefault(counted.code(), expected.code()).equals(expected.code());
  }
}
