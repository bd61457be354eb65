package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.export.ExportReader;
import gambrel.files.guess.LayoutDraft.Question;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
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
  private static final int SHOWN_VALUES = 5;
  private static final int MOST_FILES = 40;
  private static final int LONGEST = 100;
  private static final String ASKED = "  To be answered: ";

  /** The lines of a layout about the status. */
  private static final Pattern STATUS = Pattern.compile("#?(column|value)\\.status[.=].*");

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
    int head = lines.size();
    try {
      var first = paths.subList(0, Math.min(MOST_FILES, paths.size()));
      var sample = ExportSample.of(folder, first);
      if (sample.files().isEmpty()) {
        return;
      }
      var choice = layouts.of(paths.get(0));
      var layout = choice.layout();
      var read = AsRead.of(folder, first, choice);
      var place = layout.place().file();
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
      var named = name.isEmpty() ? folderFor() : name;
      var proposal = new LayoutProposal(sample, shop, today, named);
      if (saved && !read.isWrong()) {
        confirm(read, proposal, layout);
      } else if (read.isRight() && proposal.draft().questions().isEmpty()) {
        asRead(read, sample, false);
      } else {
        propose(proposal, name.isEmpty());
      }
      long asked = lines.stream().skip(head).filter(line -> line.startsWith(ASKED)).count();
      if (asked > 0) {
        lines.set(head, lines.get(head) + " Questions to be answered: " + asked + '.');
      }
    } catch (IOException e) {
      // The notices say which file cannot be opened.
    }
    say("");
  }

  private void say(String line) {
    lines.add(line);
  }

  private void asRead(AsRead read, ExportSample sample, boolean saved) {
    columns(read, Optional.empty(), saved);
    rows(read, sample);
    lacking(read, false);
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
                                .flatMap(p -> p.draft().why(entry.getKey()))
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

  private void rows(AsRead read, ExportSample sample) {
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

  // What the shop folder lacks.

  private void lacking(AsRead read, boolean asked) {
    var scales =
        read.rows().stream()
            .map(row -> row.get(Field.SCALE))
            .filter(id -> !id.isEmpty() && !shop.scales().containsKey(id))
            .distinct()
            .toList();
    if (!scales.isEmpty() && !asked) {
      say(
          "  Scales that scales.csv lacks; the rows to add (division: the smallest step it shows)."
              + " If one is a scale of the shop by another name, say so in the layout instead:"
              + " value.scale."
              + scales.get(0)
              + "=ITS-ID.");
      say("    scale,unit,division");
      scales.forEach(id -> say("    " + id + ',' + shop.settings().unit().id() + ','));
    }
    new MissingCodes(shop, read).lines().forEach(this::say);
  }

  // What is proposed.

  /** Says how a saved layout reads its exports, and asks what it leaves open. */
  private void confirm(AsRead now, LayoutProposal proposal, Layout layout) throws IOException {
    asRead(now, proposal.sample(), true);
    var open =
        proposal.draft().questions().stream()
            .filter(
                question ->
                    proposal.row(question).flatMap(now::row).flatMap(AsRead::problem).isPresent())
            .toList();
    ask(open, proposal);
    var status =
        proposal.draft().lines().stream().filter(line -> STATUS.matcher(line).matches()).toList();
    if (layout.cancelled().isEmpty()) {
      askWhichIsCancelled(now);
    }
    boolean hasStatus = layout.named().containsKey(Field.STATUS.id());
    if (!hasStatus && !now.positions().containsKey(Field.STATUS.id()) && !status.isEmpty()) {
      say(
          ASKED
              + "Does a column that is not read say which weighings count? If so, add to the layout"
              + " what is right of these lines, else column.status= without a name:");
      status.forEach(line -> say("    " + line));
    }
    var unnamed =
        now.rows().stream()
            .filter(row -> row.get(Field.UNIT).isEmpty() && row.unit().isEmpty())
            .toList();
    if (ProposedWeights.mayBeGrams(AsRead.weights(unnamed))) {
      String own = unit(unnamed.get(0));
      say(ASKED + "Are its whole numbers grams, or " + own + "? Say so in the layout:");
      say("    " + cut(unnamed.get(0).raw()));
      say("    unit=g");
      say("    unit=" + own);
    }
  }

  /** Asks what a void row cancels that stands alone just below an equal row. */
  private void askWhichIsCancelled(AsRead now) {
    RowComparison.of(corrected(now.rows()), asOf()).notices().stream()
        .filter(notice -> notice.code() == NoticeCode.VOID_ALONE)
        .findFirst()
        .ifPresent(
            notice -> {
              say(
                  ASKED
                      + NoticeWords.ENGLISH.message(notice)
                      + " Which does it cancel? Say so in"
                      + " the layout: void=before, the row before it, or void=own, its own ticket.");
              say("    " + cut(notice.raw()));
              say("    void=before");
              say("    void=own");
            });
  }

  private void propose(LayoutProposal proposal, boolean unplaced) throws IOException {
    if (proposal.draft().lines().isEmpty()) {
      say("  No comma, semicolon, tab, | or blanks divide its lines into columns.");
      return;
    }
    var read = read(proposal, proposal.draft().lines());
    proposal.draft().found().forEach(sentence -> say("  " + sentence));
    columns(read, Optional.of(proposal), false);
    if (read.fault().isEmpty()) {
      rows(read, proposal.sample());
    }
    ask(proposal.draft().questions(), proposal);
    lacking(read, proposal.asksForScale());
    if (unplaced) {
      say(
          "  Files directly under exports have no layout: make the folder exports/"
              + proposal.name()
              + " for them.");
    }
    say(
        (proposal.draft().questions().isEmpty()
                ? "  A layout that reads it so; save as "
                : "  A layout for it, with what is to be answered at its end; save as ")
            + proposal.path()
            + ':');
    proposal.draft().lines().forEach(line -> say("  " + line));
  }

  private AsRead read(LayoutProposal proposal, List<String> lines) throws IOException {
    var choice = layouts.proposed(lines, proposal.path(), proposal.name());
    return AsRead.of(folder, proposal.sample().paths(), choice);
  }

  /** Says each question with its answers, and how a row would be read by each. */
  private void ask(List<Question> questions, LayoutProposal proposal) throws IOException {
    for (var question : questions) {
      var row = proposal.row(question);
      say(ASKED + question.asks());
      row.ifPresent(asked -> say("    " + cut(asked.csv().raw())));
      for (var option : question.options()) {
        say("    " + String.join(" and ", option));
        // The row as this answer would have it read, if the first answers of others let it be read.
        var answered = new ArrayList<>(proposal.draft().lines());
        proposal
            .draft()
            .questions()
            .forEach(other -> answered.addAll(other == question ? option : other.options().get(0)));
        row.flatMap(read(proposal, answered)::row).ifPresent(as -> say("      = " + told(as)));
      }
    }
  }

  /** The only scale, else a name to be replaced. */
  private String folderFor() {
    return shop.scales().size() == 1 ? shop.scales().keySet().iterator().next() : "SCALE";
  }
}
