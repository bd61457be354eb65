package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.export.ExportReader;
import gambrel.files.guess.LayoutDraft.Question;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Shop;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Says in words how the exports of each folder are read, and proposes a layout for those that are
 * not read right.
 */
public final class ExportAssistant {
  private static final int SHOWN_ROWS = 3;
  private static final int SHOWN_VALUES = 3;
  private static final int MOST_FILES = 40;
  private static final int LONGEST = 100;

  /** The lines of a layout about the status. */
  private static final Pattern STATUS = Pattern.compile("#?(column|value)\\.status[.=].*");

  private final Path folder;
  private final Shop shop;
  private final LocalDate today;
  private final Layouts layouts;
  private final List<String> lines = new ArrayList<>();

  /** The questions about a folder, each with its answers. */
  private final List<List<String>> asked = new ArrayList<>();

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
    int head = lines.size();
    asked.clear();
    try {
      var first = paths.subList(0, Math.min(MOST_FILES, paths.size()));
      var sample = ExportSample.of(folder, first);
      if (sample.files().isEmpty()) {
        return;
      }
      var choice = layouts.of(paths.get(0));
      var read = AsRead.of(folder, first, choice);
      var named = name.isEmpty() ? folderFor() : name;
      var proposal = new LayoutProposal(sample, shop, today, named);
      boolean saved = !choice.settings().isEmpty() || choice.fault().isPresent();
      read.fault().filter(fault -> saved).ifPresent(fault -> say("  " + fault));
      var open = proposal.draft().questions().stream().filter(q -> !isAnswered(q, choice)).toList();
      if (saved && read.fault().isEmpty()) {
        confirm(read, proposal, choice.layout(), open);
      } else if (choice.fault().isPresent() || saved && !open.isEmpty()) {
        ask(open, proposal);
      } else if (read.isRight() && proposal.draft().questions().isEmpty()) {
        asRead(read, sample);
      } else {
        propose(proposal, name.isEmpty());
      }
      var place = choice.layout().place().file();
      String by = place.isEmpty() ? "read without a layout" : "read by " + place;
      String files = paths.size() == 1 ? "1 file" : paths.size() + " files";
      String how = read.isWrong() ? "not read right yet" : by;
      lines.add(head, "exports/%s: %s, %s.%s".formatted(name, files, how, answers(proposal)));
      lines.addAll(head + 1, asked.stream().flatMap(List::stream).toList());
    } catch (IOException e) {
      // The notices say which file cannot be opened.
    }
    say("");
  }

  private String answers(LayoutProposal proposal) {
    return asked.isEmpty()
        ? ""
        : " Questions to be answered: %d. Put the lines of the right answers at the end of %s."
            .formatted(asked.size(), proposal.path());
  }

  /** Whether a layout has every line of one of the answers to a question. */
  private static boolean isAnswered(Question question, Layouts.Choice choice) {
    return question.options().stream()
        .anyMatch(option -> option.stream().allMatch(line -> has(choice, line)));
  }

  /** Whether a layout has the line of a status, or a value for the key of another line. */
  private static boolean has(Layouts.Choice choice, String line) {
    var parts = line.split("(?<!\\\\)=", 2);
    String value = choice.settings().get(parts[0].replace("\\", ""));
    return value != null
        && (line.startsWith("value.status.")
            ? parts[1].equalsIgnoreCase(value.strip())
            : parts[1].isEmpty() || !value.isBlank());
  }

  private void say(String line) {
    lines.add(line);
  }

  private void asRead(AsRead read, ExportSample sample) {
    columns(read, Optional.empty());
    rows(read, sample);
    new MissingCodes(shop, read).lines().forEach(this::say);
  }

  // What is read.

  /** The columns in a line, each with a reason unless its name is one. */
  private void columns(AsRead read, Optional<LayoutProposal> proposal) {
    var taken =
        read.positions().entrySet().stream()
            .sorted(Comparator.comparing(entry -> GuessWords.columns().indexOf(entry.getKey())))
            .map(
                entry ->
                    entry.getKey()
                        + ' '
                        + column(read, entry.getValue())
                        + proposal
                            .flatMap(p -> p.draft().why(entry.getKey()))
                            .filter(why -> !why.startsWith("its name"))
                            .map(why -> " (" + why + ')')
                            .orElse(""));
    var above = read.above().stream().sorted().map(column -> column + " on a line above the rows");
    say("  Columns: " + Stream.concat(taken, above).collect(Collectors.joining(", ")) + '.');
    var unused =
        IntStream.range(0, read.names().size())
            .filter(i -> !read.positions().containsValue(i))
            .mapToObj(i -> column(read, i) + " (" + values(read.records(), i) + ')')
            .toList();
    if (!unused.isEmpty()) {
      say("  Not used: " + String.join(", ", unused) + '.');
    }
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

  private void rows(AsRead read, ExportSample sample) {
    if (read.rows().isEmpty()) {
      return;
    }
    if (asked.isEmpty()) {
      say("  The first rows, and how each is read:");
      read.rows().stream()
          .limit(SHOWN_ROWS)
          .forEach(row -> show(row.raw(), row).forEach(this::say));
    }
    long files = read.rows().stream().map(row -> row.place().file()).distinct().count();
    var times = read.rows().stream().map(this::time).sorted().toList();
    var weights = new TreeMap<String, BigDecimal>();
    read.rows().stream()
        .filter(row -> AsRead.problem(row).isEmpty())
        .forEach(
            row ->
                AsRead.weights(List.of(row))
                    .forEach(net -> weights.merge(unit(row), net, BigDecimal::add)));
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
    if (times.stream().allMatch(time -> time.endsWith("T00:00"))) {
      say(
          "  No row has a clock time: all count as 00:00. If a column has it, name it: column.clock=");
    }
    PrintedTotals.lines(sample.files(), read.rows(), this::counted)
        .forEach(line -> say("  " + line));
    var bad = read.rows().stream().filter(row -> AsRead.problem(row).isPresent()).toList();
    if (!bad.isEmpty()) {
      say(
          "  %d of them cannot be used as they stand; the first is %s: %s"
              .formatted(
                  bad.size(), bad.get(0).place(), cut(AsRead.problem(bad.get(0)).orElseThrow())));
    }
  }

  /** A row as it stands, and as it is read. */
  private List<String> show(String raw, ExportRow row) {
    return List.of("    " + cut(raw), "      = " + told(row));
  }

  /** The rows that count: without repeats, void rows and what these cancel. */
  private List<ExportRow> counted(List<ExportRow> rows) {
    var read = corrected(rows);
    var comparison = RowComparison.of(read, asOf());
    return read.stream()
        .filter(row -> comparison.disposition(row) == RowDisposition.USED)
        .map(ReadRow::row)
        .toList();
  }

  private List<ReadRow> corrected(List<ExportRow> rows) {
    return CorrectedRows.of(List.of(new ExportFile("", rows)), shop, asOf()).rows();
  }

  /** The end of the day of the run. */
  private OffsetDateTime asOf() {
    return today.plusDays(1).atStartOfDay(shop.settings().zone()).toOffsetDateTime();
  }

  /** The time of a row on the shop's clock. */
  private String time(ExportRow row) {
    String text = row.get(Field.TIME).replace(' ', 'T');
    try {
      var exact = OffsetDateTime.parse(text);
      return exact.atZoneSameInstant(shop.settings().zone()).toLocalDateTime().toString();
    } catch (DateTimeException e) {
      return text;
    }
  }

  private String told(ExportRow row) {
    if (row.broken().isPresent()) {
      return AsRead.problem(row).orElseThrow();
    }
    return Stream.of(Field.values())
        .filter(
            field -> field != Field.UNIT && field != Field.OPERATOR && !row.get(field).isEmpty())
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

  // What is proposed.

  /** Says how a saved layout reads its exports, and asks what it leaves open. */
  private void confirm(AsRead now, LayoutProposal proposal, Layout layout, List<Question> open)
      throws IOException {
    var standing =
        open.stream()
            .filter(
                question ->
                    question.isSilent()
                        || proposal
                            .row(question)
                            .flatMap(now::row)
                            .flatMap(AsRead::problem)
                            .isPresent())
            .toList();
    ask(standing, proposal);
    var status =
        proposal.draft().lines().stream().filter(line -> STATUS.matcher(line).matches()).toList();
    boolean hasStatus = layout.named().containsKey(Field.STATUS.id());
    if (!hasStatus && !now.positions().containsKey(Field.STATUS.id()) && !status.isEmpty()) {
      ask(
          "Does a column that is not read say which weighings count? If so, add to the layout"
              + " what is right of these lines, else column.status= without a name:",
          status);
    }
    var unnamed =
        now.rows().stream()
            .filter(row -> row.get(Field.UNIT).isEmpty() && row.unit().isEmpty())
            .toList();
    if (ProposedWeights.mayBeGrams(AsRead.weights(unnamed))
        && asked.stream().flatMap(List::stream).noneMatch(line -> line.contains("    unit="))) {
      String own = unit(unnamed.get(0));
      ask(
          "Are its whole numbers grams, or " + own + "? Say so in the layout:",
          List.of(cut(unnamed.get(0).raw()), "unit=g", "unit=" + own));
    }
    asRead(now, proposal.sample());
  }

  private void propose(LayoutProposal proposal, boolean unplaced) throws IOException {
    var draft = proposal.draft();
    if (draft.lines().isEmpty()) {
      say("  No comma, semicolon, tab, | or blanks divide its lines into columns.");
      return;
    }
    ask(draft.questions(), proposal);
    var read = read(proposal, draft.lines());
    draft.found().forEach(sentence -> say("  " + sentence));
    columns(read, Optional.of(proposal));
    if (read.fault().isEmpty()) {
      rows(read, proposal.sample());
    }
    if (!draft.isWithheld("code")) {
      var codes = new MissingCodes(shop, answered(proposal, null, List.of()));
      codes.lines().forEach(this::say);
    }
    if (unplaced) {
      say(
          "  Files directly under exports have no layout: make the folder exports/"
              + proposal.name()
              + " for them.");
    }
    say("  A layout that reads it so; save as " + proposal.path() + ':');
    draft.lines().forEach(line -> say("  " + line));
  }

  private AsRead read(LayoutProposal proposal, List<String> lines) throws IOException {
    var choice = layouts.proposed(lines, proposal.path(), proposal.name());
    return AsRead.of(folder, proposal.sample().paths(), choice);
  }

  /** The exports as an answer to a question would have them read, with the first ones to others. */
  private AsRead answered(LayoutProposal proposal, Question question, List<String> answer)
      throws IOException {
    var all = new ArrayList<>(proposal.draft().lines());
    proposal
        .draft()
        .questions()
        .forEach(other -> all.addAll(other == question ? answer : other.options().get(0)));
    return read(proposal, all);
  }

  /** Asks questions, each with a row and how it would be read by each answer. */
  private void ask(List<Question> questions, LayoutProposal proposal) throws IOException {
    for (var question : questions) {
      var row = proposal.row(question);
      var answers = new ArrayList<String>();
      row.ifPresent(of -> answers.add(cut(of.csv().raw())));
      for (var option : question.options()) {
        answers.addAll(option);
        row.flatMap(answered(proposal, question, option)::row)
            .ifPresent(as -> answers.add("  = " + told(as)));
      }
      ask(question.asks(), answers);
    }
  }

  private void ask(String asks, List<String> answers) {
    var lines =
        new ArrayList<>(List.of("  %d. To be answered: %s".formatted(asked.size() + 1, asks)));
    answers.forEach(answer -> lines.add("    " + answer));
    asked.add(lines);
  }

  /** The only scale, else a name to be replaced. */
  private String folderFor() {
    return shop.scales().size() == 1 ? shop.scales().keySet().iterator().next() : "SCALE";
  }
}
