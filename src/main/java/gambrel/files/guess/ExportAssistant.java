package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.export.ExportReader;
import gambrel.files.guess.LayoutDraft.Question;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Says in words how the exports of each folder are read, and proposes a layout for those that are
 * not read right.
 */
public final class ExportAssistant {
  private static final int SHOWN_ROWS = 3;
  private static final int SHOWN_VALUES = 5;
  private static final int MOST_FILES = 40;
  private static final int LONGEST = 100;

  /** The fields of a row in the order in which they are printed. */
  private static final List<Field> TOLD =
      List.of(
          Field.SCALE,
          Field.TICKET,
          Field.TIME,
          Field.BODY,
          Field.BATCH,
          Field.CUSTOMER,
          Field.CODE,
          Field.NET,
          Field.GROSS,
          Field.TARE,
          Field.PIECES,
          Field.STATUS);

  private final Path folder;
  private final Shop shop;
  private final LocalDate today;
  private final Layouts layouts;
  private final List<String> lines = new ArrayList<>();

  private ExportAssistant(Path folder, Shop shop, LocalDate today) {
    this.folder = folder;
    this.shop = shop;
    this.today = today;
    this.layouts = new Layouts(folder, shop, new ArrayList<>());
  }

  /**
   * What is to be said about the exports of a shop folder, line by line.
   *
   * @param today the day of the run
   */
  public static List<String> lines(Path folder, Shop shop, LocalDate today) {
    var assistant = new ExportAssistant(folder, shop, today);
    try {
      Groups.inOrder(ExportReader.paths(folder).stream(), ExportAssistant::first)
          .forEach(assistant::tell);
    } catch (IOException e) {
      // The notices say that the exports cannot be listed.
      assistant.lines.clear();
    }
    return assistant.lines;
  }

  /** The first folder under the exports; empty for a file directly there. */
  private static String first(String path) {
    var parts = path.split("/", 3);
    return parts.length < 3 ? "" : parts[1];
  }

  private void tell(String name, List<String> paths) {
    try {
      var first = paths.subList(0, Math.min(MOST_FILES, paths.size()));
      var sample = ExportSample.of(folder, first);
      if (sample.files().isEmpty()) {
        return;
      }
      var choice = layouts.of(paths.get(0));
      var read = AsRead.of(folder, first, choice);
      var place = choice.layout().place().file();
      boolean saved = !place.isEmpty() || choice.fault().isPresent();
      String by = saved ? "read by " + place : "read without a layout";
      say(
          "exports/%s: %d %s, %s."
              .formatted(
                  name,
                  paths.size(),
                  paths.size() == 1 ? "file" : "files",
                  read.isWrong() ? "not read right yet" : by));
      read.fault().filter(fault -> saved).ifPresent(fault -> say("  " + fault));
      if (read.isRight() && saved) {
        asRead(read, true);
        askUnit(read);
      } else {
        propose(name, sample, first, read, saved);
      }
      say("");
    } catch (IOException e) {
      // The notices say which file cannot be opened.
      say("");
    }
  }

  private void say(String line) {
    lines.add(line);
  }

  private void asRead(AsRead read, boolean saved) {
    columns(read, Optional.empty(), saved);
    rows(read);
    lacking(read);
  }

  // What is read.

  private void columns(AsRead read, Optional<LayoutProposal> proposal, boolean saved) {
    say("  What each column is taken for:");
    read.positions().entrySet().stream()
        .sorted(
            (one, other) ->
                GuessWords.columns().indexOf(one.getKey())
                    - GuessWords.columns().indexOf(other.getKey()))
        .forEach(
            entry ->
                say(
                    "    %-9s %s: %s"
                        .formatted(
                            entry.getKey(),
                            column(read, entry.getValue()),
                            proposal
                                .flatMap(p -> p.why(entry.getKey()))
                                .orElse(saved ? "as the layout says" : "its name"))));
    read.above().stream()
        .sorted()
        .forEach(column -> say("    %-9s on a line above the rows".formatted(column)));
    var unused =
        IntStream.range(0, width(read))
            .filter(i -> !read.positions().containsValue(i))
            .mapToObj(i -> column(read, i) + " (" + values(read.records(), i) + ')')
            .toList();
    if (!unused.isEmpty()) {
      say("  Not used:");
      unused.forEach(column -> say("    " + column));
    }
  }

  private static int width(AsRead read) {
    return read.names().size();
  }

  private static String column(AsRead read, int index) {
    String name = read.names().get(index);
    return name.isEmpty()
        ? "column " + (index + 1)
        : '"' + name.replaceAll("\\p{Cntrl}", " ") + '"';
  }

  private static String values(List<CsvRow> records, int index) {
    var values = records.stream().map(row -> row.cell(index)).distinct().toList();
    var shown =
        values.stream().limit(SHOWN_VALUES).map(v -> v.isEmpty() ? "blank" : cut(v)).toList();
    int more = values.size() - shown.size();
    return String.join("; ", shown) + (more > 0 ? "; and " + more + " more" : "");
  }

  private static String cut(String text) {
    String plain = text.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + '…';
  }

  private void rows(AsRead read) {
    if (read.rows().isEmpty()) {
      return;
    }
    say("  The first rows, and how each is read:");
    for (var row : read.rows().subList(0, Math.min(SHOWN_ROWS, read.rows().size()))) {
      say("    " + cut(row.raw()));
      say("      = " + told(row));
    }
    long files = read.rows().stream().map(row -> row.place().file()).distinct().count();
    var times = read.rows().stream().map(this::time).sorted().toList();
    var weights = new TreeMap<String, BigDecimal>();
    for (var row : read.rows()) {
      DecimalText.of(row.get(row.get(Field.NET).isEmpty() ? Field.GROSS : Field.NET))
          .filter(net -> AsRead.problem(row).isEmpty())
          .ifPresent(net -> weights.merge(unit(row), net, BigDecimal::add));
    }
    say(
        "  In %s %d rows from %s to %s; they show %s, with what is cancelled or repeated."
            .formatted(
                files == MOST_FILES ? "the first " + MOST_FILES + " files" : "all",
                read.rows().size(),
                times.get(0),
                times.get(times.size() - 1),
                weights.isEmpty()
                    ? "no weights"
                    : weights.entrySet().stream()
                        .map(sum -> sum.getValue().toPlainString() + ' ' + sum.getKey())
                        .collect(Collectors.joining(" and "))));
    var bad = read.rows().stream().filter(row -> AsRead.problem(row).isPresent()).toList();
    if (!bad.isEmpty()) {
      say(
          "  %d of them cannot be used as they stand; the first is %s: %s"
              .formatted(
                  bad.size(), bad.get(0).place(), cut(AsRead.problem(bad.get(0)).orElseThrow())));
    }
  }

  /** The time of a row on the shop's clock. */
  private String time(ExportRow row) {
    String text = row.get(Field.TIME);
    try {
      var exact = OffsetDateTime.parse(text.replace(' ', 'T'));
      return exact.atZoneSameInstant(shop.settings().zone()).toLocalDateTime().toString();
    } catch (DateTimeException e) {
      return text.replace(' ', 'T');
    }
  }

  private String told(ExportRow row) {
    if (row.broken().isPresent()) {
      return AsRead.problem(row).orElseThrow();
    }
    return TOLD.stream()
        .filter(field -> !row.get(field).isEmpty())
        .map(field -> cell(field, row))
        .map(ExportAssistant::cut)
        .collect(Collectors.joining(", "));
  }

  private String cell(Field field, ExportRow row) {
    boolean legible = !row.unreadable().containsKey(field);
    return switch (field) {
      case TIME -> legible ? "time " + time(row) : AsRead.cell(field, row);
      case NET, GROSS, TARE -> AsRead.cell(field, row) + (legible ? ' ' + unit(row) : "");
      default -> AsRead.cell(field, row);
    };
  }

  private String unit(ExportRow row) {
    var scale = Optional.ofNullable(shop.scales().get(row.get(Field.SCALE)));
    String named = row.get(Field.UNIT);
    return named.isEmpty()
        ? row.unit().or(() -> scale.map(Scale::unit)).orElse(shop.settings().unit()).id()
        : named.toLowerCase(Locale.ROOT);
  }

  /** Asks for the unit of whole numbers that may be grams and of which no unit is named. */
  private void askUnit(AsRead read) {
    var unnamed =
        read.rows().stream()
            .filter(row -> row.get(Field.UNIT).isEmpty() && row.unit().isEmpty())
            .filter(row -> !isCoarse(row))
            .toList();
    var weights =
        unnamed.stream()
            .map(row -> row.get(row.get(Field.NET).isEmpty() ? Field.GROSS : Field.NET))
            .flatMap(text -> DecimalText.of(text).stream())
            .toList();
    if (ProposedWeights.mayBeGrams(weights)) {
      var row = unnamed.get(0);
      String own = unit(row);
      say("  To be answered: Are its whole numbers grams, or " + own + "? Say so in the layout:");
      say("    " + cut(row.raw()));
      say("    unit=g");
      say("    unit=" + own);
    }
  }

  /** Whether a row is of a scale that shows no decimals. */
  private boolean isCoarse(ExportRow row) {
    return Optional.ofNullable(shop.scales().get(row.get(Field.SCALE)))
        .filter(scale -> scale.division().compareTo(BigDecimal.ONE) >= 0)
        .isPresent();
  }

  // What the shop folder lacks.

  private void lacking(AsRead read) {
    var scales =
        read.rows().stream()
            .map(row -> row.get(Field.SCALE))
            .filter(id -> !id.isEmpty() && !shop.scales().containsKey(id))
            .distinct()
            .toList();
    if (!scales.isEmpty()) {
      say(
          "  Scales that scales.csv lacks; the rows to add (division: the smallest step it shows):");
      say("    scale,unit,division");
      scales.forEach(id -> say("    " + id + ',' + shop.settings().unit().id() + ','));
    }
    new MissingCodes(shop, read).lines().forEach(this::say);
  }

  // What is proposed.

  private void propose(
      String name, ExportSample sample, List<String> paths, AsRead now, boolean saved)
      throws IOException {
    String to = name.isEmpty() ? folderFor() : name;
    var proposal = new LayoutProposal(sample, shop, today, to);
    if (!saved && now.isRight() && proposal.questions().isEmpty()) {
      asRead(now, false);
      return;
    }
    if (proposal.layout().isEmpty()) {
      say("  No comma, semicolon, tab, | or blanks divide its lines into columns.");
      return;
    }
    var path = "layouts/" + to + ".properties";
    if (saved && !now.isWrong()) {
      asRead(now, true);
      var open =
          proposal.questions().stream()
              .filter(
                  question ->
                      proposal.row(question).flatMap(now::row).flatMap(AsRead::problem).isPresent())
              .toList();
      ask(open, proposal, path, to, paths);
      return;
    }
    var read = AsRead.of(folder, paths, layouts.proposed(proposal.layout(), path, to));
    proposal.found().forEach(sentence -> say("  " + sentence));
    columns(read, Optional.of(proposal), false);
    if (read.fault().isEmpty()) {
      rows(read);
    }
    ask(proposal.questions(), proposal, path, to, paths);
    lacking(read);
    if (name.isEmpty()) {
      say(
          "  Files directly under exports have no layout: make the folder exports/"
              + to
              + " for them.");
    }
    say(
        (proposal.questions().isEmpty()
                ? "  A layout that reads it so; save as "
                : "  A layout for it, with what is to be answered at its end; save as ")
            + path
            + ':');
    proposal.layout().forEach(line -> say("  " + line));
  }

  /** Says each question with its answers, and how a row would be read by each. */
  private void ask(
      List<Question> questions,
      LayoutProposal proposal,
      String path,
      String name,
      List<String> paths)
      throws IOException {
    for (var question : questions) {
      say("  To be answered: " + question.asks());
      proposal.row(question).ifPresent(row -> say("    " + cut(row.csv().raw())));
      for (var option : question.options()) {
        say("    " + String.join(" and ", option));
        var row = first(proposal, question, option, path, name, paths);
        row.ifPresent(told -> say("      = " + told));
      }
    }
  }

  /** The only scale, else a name to be replaced. */
  private String folderFor() {
    return shop.scales().size() == 1 ? shop.scales().keySet().iterator().next() : "SCALE";
  }

  /** The row of a question as an answer would have it read, if the others let it be read. */
  private Optional<String> first(
      LayoutProposal proposal,
      Question question,
      List<String> option,
      String path,
      String name,
      List<String> paths)
      throws IOException {
    var answered = new ArrayList<>(proposal.layout());
    for (var other : proposal.questions()) {
      answered.addAll(other == question ? option : other.options().get(0));
    }
    var read = AsRead.of(folder, paths, layouts.proposed(answered, path, name));
    return proposal.row(question).flatMap(read::row).map(this::told);
  }
}
