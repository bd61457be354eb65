package gambrel.files.guess;

import gambrel.cli.Main;
import gambrel.night.Inputs;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.weighing.Ledger;
import gambrel.trade.weighing.Weighing;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A shop folder with exports of an unknown scale, and a user who follows {@code check} literally.
 *
 * <p>A folder of {@code src/test/resources/gambrel/formats} holds the files that are laid over
 * {@code base}; {@code expected.csv}, the weighings that the exports mean ({@code
 * scale,time,body,code,net}, and behind them {@code batch,customer} in a case where a weighing has
 * one); and where the user has to answer questions {@code edits.txt}, at most two lines {@code
 * key=value} for the proposed layout, behind {@code FOLDER: } for that of one folder. The line
 * {@code rename .SUFFIX} follows the notice of exports whose names do not end as those of text
 * files do. The night is that of all cases, or the moment in {@code night.txt} where the exports
 * are of later days.
 */
final class FormatCase {
  /** Where all cases are. */
  static final Path TOP = Path.of("src/test/resources/gambrel/formats");

  /** When the night is, if the case does not say. */
  private static final String NIGHT = "2026-08-05T02:00";

  private static final String OWN_NIGHT = "night.txt";

  private static final Pattern SAVE = Pattern.compile(".*save as (\\S.*):");
  private static final Pattern OF_FOLDER = Pattern.compile("([A-Za-z]+): (.*)");
  private static final String RENAME = "rename ";
  private static final String QUESTION = "To be answered";

  /** Half a gram and a little more: no scale of the cases shows less than a gram. */
  private static final BigDecimal TOLERANCE = new BigDecimal("0.00051");

  /** What came of a format. */
  enum Outcome {
    /** The layout that {@code check} proposes, or no layout at all, reads it right. */
    RIGHT_AS_PROPOSED,
    /** The layout reads it right after the user's answers. */
    RIGHT_AFTER_EDITS,
    /** It is not read right, and a notice that stops or holds, or an open question, says so. */
    TOLD,
    /** Other weighings count than should, and nothing says so. */
    WRONG_SILENTLY
  }

  /** An outcome, and the reason where it is not right. */
  record Result(String name, Outcome outcome, String reason) {
    boolean isRight() {
      return outcome == Outcome.RIGHT_AS_PROPOSED || outcome == Outcome.RIGHT_AFTER_EDITS;
    }
  }

  /** A weighing as {@code expected.csv} has it. */
  record Counted(
      LocalDateTime time,
      String scale,
      String body,
      String code,
      BigDecimal net,
      String batch,
      String customer) {
    static Counted parse(String line) {
      var cells = line.split(",", -1);
      return new Counted(
          LocalDateTime.parse(cells[1]),
          cells[0],
          cells[2],
          cells[3],
          new BigDecimal(cells[4]),
          cells.length > 5 ? cells[5] : "",
          cells.length > 6 ? cells[6] : "");
    }

    static Counted of(Weighing weighing, String code) {
      return new Counted(
          weighing.time().toLocalDateTime(),
          weighing.scale().id(),
          weighing.body(),
          code,
          weighing.net().decimal(),
          weighing.batch(),
          weighing.customer());
    }

    boolean is(Counted other) {
      return isButForNames(other)
          && scale.equals(other.scale)
          && code.equals(other.code)
          && batch.equals(other.batch)
          && customer.equals(other.customer);
    }

    /** Whether body, time and weight are the same. */
    boolean isButForNames(Counted other) {
      return time.equals(other.time)
          && body.equals(other.body)
          && net.subtract(other.net).abs().compareTo(TOLERANCE) < 0;
    }

    @Override
    public String toString() {
      return String.join(
          ",", scale, time.toString(), body, code, net.toPlainString(), batch, customer);
    }
  }

  private final Path folder;
  private final Path shop;
  private final String night;
  private final StringBuilder printed = new StringBuilder();

  /** The case of {@code folder}, laid out in {@code shop}. */
  FormatCase(Path folder, Path shop) throws IOException {
    this.folder = folder;
    this.shop = shop;
    var own = folder.resolve(OWN_NIGHT);
    this.night = Files.exists(own) ? Files.readString(own).strip() : NIGHT;
  }

  /** Every case, by name. */
  static List<Path> all() throws IOException {
    try (var folders = Files.list(TOP)) {
      return folders.filter(f -> !f.endsWith("base")).sorted().toList();
    }
  }

  /** What the user saw. */
  String printed() {
    return printed.toString();
  }

  /** Follows {@code check}, then reads the folder as the night does. */
  Result follow() throws Exception {
    copy(TOP.resolve("base"));
    copy(folder);
    var saved = save(check());
    var proposed = night(Outcome.RIGHT_AS_PROPOSED);
    var answers = folder.resolve("edits.txt");
    if (proposed.outcome() != Outcome.TOLD || !Files.exists(answers)) {
      return proposed;
    }
    var edits = Files.readAllLines(answers).stream().filter(a -> !a.isBlank()).toList();
    for (var rename : edits.stream().filter(edit -> edit.startsWith(RENAME)).toList()) {
      rename(rename.substring(RENAME.length()));
      saved = save(check());
    }
    answer(saved, edits.stream().filter(edit -> !edit.startsWith(RENAME)).toList());
    return night(Outcome.RIGHT_AFTER_EDITS);
  }

  /** Gives the exports the ending that the user's answers have, if they have one. */
  void renameAsAnswered() throws IOException {
    var answers = folder.resolve("edits.txt");
    if (Files.exists(answers)) {
      for (String edit : Files.readAllLines(answers)) {
        if (edit.startsWith(RENAME)) {
          rename(edit.substring(RENAME.length()));
        }
      }
    }
  }

  private void rename(String suffix) throws IOException {
    try (var files = Files.walk(shop.resolve("exports"))) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        Files.move(file, file.resolveSibling(file.getFileName() + suffix));
      }
    }
  }

  /** Lays the files of a folder over those of the shop. */
  void copy(Path from) throws IOException {
    try (var files = Files.walk(from)) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        var to = shop.resolve(from.relativize(file).toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }
    Files.deleteIfExists(shop.resolve("expected.csv"));
    Files.deleteIfExists(shop.resolve("edits.txt"));
    Files.deleteIfExists(shop.resolve(OWN_NIGHT));
  }

  /** What {@code check} prints. */
  String check(String... options) {
    var text = new StringWriter();
    var out = new PrintWriter(text);
    var all =
        Stream.concat(Stream.of("check", shop.toString(), "--as-of", night), Stream.of(options));
    int code = Main.run(out, out, all.toArray(String[]::new));
    printed.append(text).append("exit ").append(code).append("\n\n");
    return text.toString();
  }

  /** Saves every layout that {@code check} printed; returns where. */
  private List<Path> save(String printed) throws IOException {
    var saved = new ArrayList<Path>();
    Path into = null;
    var layout = new ArrayList<String>();
    for (String line : Stream.concat(printed.lines(), Stream.of("")).toList()) {
      var name = SAVE.matcher(line);
      if (into != null && line.startsWith("  ")) {
        layout.add(line.substring(2));
      } else if (into != null) {
        Files.createDirectories(into.getParent());
        Files.write(into, layout);
        saved.add(into);
        into = null;
      }
      if (name.matches()) {
        into = shop.resolve(name.group(1));
        layout.clear();
      }
    }
    return saved;
  }

  /**
   * Puts each answer in place of the line with its key, or at the end of every layout; one that
   * begins with a folder and a colon only in the layout of that.
   */
  private void answer(List<Path> all, List<String> answers) throws IOException {
    for (String said : answers) {
      var of = OF_FOLDER.matcher(said);
      boolean isOfOne = of.matches();
      String answer = isOfOne ? of.group(2) : said;
      var layouts =
          all.stream().filter(l -> !isOfOne || l.endsWith(of.group(1) + ".properties")).toList();
      String key = answer.substring(0, answer.indexOf('=') + 1);
      boolean known = false;
      for (var layout : layouts) {
        known |= Files.readAllLines(layout).stream().anyMatch(line -> has(line, key));
      }
      for (var layout : layouts) {
        var lines = new ArrayList<>(Files.readAllLines(layout));
        if (lines.removeIf(line -> has(line, key)) || !known) {
          lines.add(answer);
        }
        Files.write(layout, lines);
      }
    }
  }

  private static boolean has(String line, String key) {
    return line.startsWith(key) || line.startsWith("#" + key);
  }

  /** Confirms by {@code check}, and compares what the night counts with what is expected. */
  private Result night(Outcome right) throws Exception {
    String confirmed = check();
    var inputs = Inputs.read(shop, Progress.NONE);
    var ledger = ledger(inputs);
    var counted = counted(ledger);
    var missing = new ArrayList<Counted>();
    for (var expected : expected()) {
      var met = counted.stream().filter(expected::is).findFirst();
      met.ifPresentOrElse(counted::remove, () -> missing.add(expected));
    }
    var told = new ArrayList<String>();
    inputs.notices().stream().filter(FormatCase::tells).forEach(n -> told.add(words(n)));
    ledger.setAside().forEach(row -> told.add(words(row.notice())));
    confirmed.lines().filter(l -> l.contains(QUESTION)).forEach(l -> told.add(l.strip()));
    String difference =
        (missing.isEmpty() ? "" : missing.size() + " not counted: " + missing.get(0) + "; ")
            + (counted.isEmpty() ? "" : counted.size() + " too many: " + counted.get(0) + "; ");
    if (difference.isEmpty() && told.isEmpty()) {
      return new Result(folder.getFileName().toString(), right, "");
    }
    String first = told.isEmpty() ? "" : told.size() + " told: " + told.get(0);
    return new Result(
        folder.getFileName().toString(),
        told.isEmpty() ? Outcome.WRONG_SILENTLY : Outcome.TOLD,
        difference + first);
  }

  /** The weighings that the exports mean. */
  List<Counted> expected() throws IOException {
    try (var lines = Files.lines(folder.resolve("expected.csv"))) {
      return lines.skip(1).filter(l -> !l.isBlank()).map(Counted::parse).toList();
    }
  }

  /** The rows of a shop folder as the night takes them. */
  Ledger ledger(Inputs inputs) {
    var asOf = LocalDateTime.parse(night).atZone(inputs.shop().settings().zone());
    return Ledger.of(inputs.exports(), inputs.shop(), asOf.toOffsetDateTime(), rows -> {});
  }

  /** The weighings that count. */
  static List<Counted> counted(Ledger ledger) {
    var counted = new ArrayList<Counted>();
    ledger.weighings().stream().forEach(w -> counted.add(Counted.of(w, w.code().pattern())));
    return counted;
  }

  private static boolean tells(Notice notice) {
    return notice.severity() == Severity.STOP
        || notice.severity() == Severity.HOLD
        || notice.code() == NoticeCode.EXPORT_OTHER;
  }

  private static String words(Notice notice) {
    return notice.code().id() + " " + notice.place() + " " + notice.saying();
  }
}
