package gambrel.files.guess;

import gambrel.files.export.ExportReader;
import gambrel.files.folder.Addition;
import gambrel.files.guess.LayoutDraft.Question;
import gambrel.files.guess.PrintedTotals.Compared;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.UnreadRow;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Says in words how the exports of each folder are read, and proposes a layout for those that are
 * not read right.
 */
public final class ExportAssistant {
  private static final int SHOWN_ROWS = 3;
  private static final int SHOWN_CANCELLED = 10;
  private static final int SHOWN_VALUES = 3;
  private static final int MOST_FILES = 16;

  private final Path folder;
  private final Shop shop;
  private final LocalDate today;
  private final Layouts layouts;

  /** The end of the day of the run. */
  private final OffsetDateTime asOf;

  private final CodeMeanings meanings;
  private final MissingCodes codes;
  private final MissingScales scales;
  private final List<Line> lines = new ArrayList<>();
  private final Set<String> folders = new HashSet<>();
  private final Set<String> proposed = new HashSet<>();

  /** The folders of which it is asked which rows count. */
  private final Set<String> askedOf = new HashSet<>();

  private final List<Addition> additions = new ArrayList<>();

  /** The questions about a folder, each with its answers below it. */
  private final List<List<String>> asked = new ArrayList<>();

  /** The exports of a folder as some lines read them, which several questions ask for. */
  private final Map<List<String>, AsRead> readings = new HashMap<>();

  /** Whether some folder is not read right yet, or has a question. */
  private boolean unsettled;

  /** Whether what is said now is left out as long as something is asked. */
  private boolean isForTheEnd;

  /**
   * A line that is said.
   *
   * @param isForTheEnd whether it is left out as long as something is asked: it would be read again
   */
  private record Line(String text, boolean isForTheEnd) {}

  private ExportAssistant(Path folder, Shop shop, LocalDate today) {
    this.folder = folder;
    this.shop = shop;
    this.today = today;
    this.layouts = new Layouts(folder, shop, new ArrayList<>(), this::isScale);
    this.meanings = new CodeMeanings(shop);
    this.codes = new MissingCodes(shop, meanings);
    this.scales = new MissingScales(shop.scales().keySet());
    this.asOf = today.plusDays(1).atStartOfDay(shop.settings().zone()).toOffsetDateTime();
  }

  /**
   * What is said about the exports of a shop folder.
   *
   * @param lines line by line
   * @param proposed the folders of exports for which a layout or a question is printed
   * @param asked the folders of exports of which it is asked which rows count
   * @param codes the codes for which codes.csv lacks a row that is printed
   * @param scales the scales for which scales.csv lacks a row that is printed
   * @param unfinished the rows of codes.csv of which it is said how they are finished
   * @param additions what can be saved as it is printed
   * @param isOpen whether something is asked or to be saved
   * @param isSettled whether there are exports and nothing of them is left to be answered
   */
  public record Told(
      List<String> lines,
      Set<String> proposed,
      Set<String> asked,
      Set<String> codes,
      Set<String> scales,
      Set<Place> unfinished,
      List<Addition> additions,
      boolean isOpen,
      boolean isSettled) {}

  /**
   * Looks at the exports of a shop folder; says nothing if they cannot be listed.
   *
   * @param today the day of the run
   */
  public static Told of(Path folder, Shop shop, LocalDate today) {
    var assistant = new ExportAssistant(folder, shop, today);
    try {
      var byFolder = Groups.inOrder(ExportReader.paths(folder).stream(), ExportAssistant::first);
      assistant.folders.addAll(byFolder.keySet());
      byFolder.forEach(assistant::tell);
    } catch (IOException e) {
      // The notices say that the exports cannot be listed.
      return new Told(
          List.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), List.of(), false, false);
    }
    return assistant.told();
  }

  private Told told() {
    var missing = codes.told();
    boolean isComplete = codes.all().isEmpty() && !codes.hasUnread() && scales.all().isEmpty();
    boolean isSettled = isComplete && !unsettled && !lines.isEmpty();
    if (!scales.all().isEmpty()) {
      say(
          "scales.csv lacks these scales. Compare each smallest step with the scale's plate, and put"
              + " them at its end:");
      scales.all().forEach(row -> say("    " + row));
    }
    scales.addition().ifPresent(additions::add);
    missing.lines().forEach(this::say);
    additions.addAll(missing.additions());
    boolean isOpen = !proposed.isEmpty() || !isComplete;
    return new Told(
        lines.stream().filter(line -> !isOpen || !line.isForTheEnd()).map(Line::text).toList(),
        proposed,
        askedOf,
        codes.all(),
        scales.ids(),
        codes.unfinished().stream().map(UnreadRow::place).collect(Collectors.toSet()),
        additions,
        isOpen,
        isSettled);
  }

  /** The first folder under the exports; empty for a file directly there. */
  private static String first(String path) {
    var parts = path.split("/", 3);
    return parts.length < 3 ? "" : parts[1];
  }

  /** The files that are looked at: of a long list the first and the last, which show all dates. */
  private static List<String> some(List<String> paths) {
    int half = Math.min(MOST_FILES, paths.size()) / 2;
    return Stream.of(
            paths.subList(0, half),
            paths.subList(Math.max(half, paths.size() - MOST_FILES + half), paths.size()))
        .flatMap(List::stream)
        .toList();
  }

  private void tell(String name, List<String> paths) {
    int head = lines.size();
    asked.clear();
    readings.clear();
    try {
      var some = some(paths);
      var choice = layouts.of(paths.get(0));
      var charset = choice.saved().map(layout -> layout.text().charset());
      var sample = ExportSample.of(folder, some, charset);
      if (sample.files().isEmpty()) {
        return;
      }
      var read = AsRead.of(folder, some, choice, shop, asOf);
      var named = name.isEmpty() ? folderFor() : name;
      var draft = LayoutProposal.of(sample, shop, today, named, choice, read, isNewScale(named));
      boolean saved = !choice.settings().isEmpty() || choice.fault().isPresent();
      boolean doubtful = draft.table().header() && !draft.questions().isEmpty();
      boolean isProposal = !saved && (!read.isRight() || doubtful);
      var open = isProposal ? draft.questions() : open(read, draft, choice, saved);
      if (isProposal) {
        propose(draft, name.isEmpty());
      } else {
        confirm(read, draft, choice, open);
      }
      boolean isOpen = isProposal || read.isWrong() || !open.isEmpty();
      scale(isOpen ? read(draft, answered(draft, open, List.of())) : read, draft, choice, open);
      unsettled |= read.isWrong() || !asked.isEmpty();
      if (!asked.isEmpty()) {
        proposed.add(named);
      }
      var place = choice.layout().place().file();
      String by = place.isEmpty() ? "read without a layout" : "read by " + place;
      String files = paths.size() == 1 ? "1 file" : paths.size() + " files";
      String how = read.isWrong() ? "not read right yet" : by;
      String answers = answers(place.isEmpty() ? draft.path() : place);
      var first = "exports/%s: %s, %s.%s".formatted(name, files, how, answers);
      lines.addAll(
          head,
          Stream.concat(Stream.of(first), asked.stream().flatMap(List::stream))
              .map(line -> new Line(line, false))
              .toList());
    } catch (IOException e) {
      // The notices say which file cannot be opened.
    }
    say("");
  }

  private String answers(String path) {
    return asked.isEmpty()
        ? ""
        : " Questions to be answered: %d. Put the lines of the right answers at the end of %s."
            .formatted(asked.size(), path);
  }

  /** Whether a layout has every line of one of the answers to a question. */
  private static boolean isAnswered(Question question, Layouts.Choice choice, LayoutDraft draft) {
    var read = choice.layout().positions(draft.table().top());
    return question.options().stream()
        .anyMatch(option -> option.stream().allMatch(line -> has(choice, read.keySet(), line)));
  }

  /**
   * Whether a layout has the line of a status, or a column or value for the key of another line.
   * One that says where the point is needs no unit.
   */
  private static boolean has(Layouts.Choice choice, Set<String> read, String line) {
    String key = LayoutDraft.key(line);
    String value = choice.settings().get(key);
    if (value == null) {
      boolean isPlaced = choice.settings().getOrDefault("decimal", "").matches("\\d");
      return key.equals("unit") && isPlaced
          || line.startsWith("column.") && read.contains(key.substring("column.".length()));
    }
    return line.matches("(value\\.status\\.|void\\.|ignore=).*")
        ? line.toLowerCase(Locale.ROOT).endsWith('=' + value.strip().toLowerCase(Locale.ROOT))
        : line.endsWith("=") || !value.isBlank();
  }

  private void say(String line) {
    lines.add(new Line(line, isForTheEnd));
  }

  /** Says what is wrong with some rows, whatever else is asked. */
  private void warn(String line) {
    lines.add(new Line(line, false));
  }

  /** The columns in a line, each with a reason if they are proposed and its name is none. */
  private void columns(AsRead read, LayoutDraft draft, boolean proposed) {
    var columns = draft.table().columns();
    var positions = read.layout().positions(draft.table().top());
    var taken =
        positions.keySet().stream()
            .sorted(Comparator.comparing(GuessWords.columns()::indexOf))
            .map(
                field ->
                    field
                        + ' '
                        + columns.get(positions.get(field)).name()
                        + draft
                            .why(field)
                            .filter(why -> proposed && !why.startsWith("its name"))
                            .map(why -> " (" + why + ')')
                            .orElse(""));
    var above =
        read.layout().text().above().keySet().stream()
            .sorted()
            .map(field -> field + " on a line above the rows");
    say("  Columns: " + Stream.concat(taken, above).collect(Collectors.joining(", ")) + '.');
    var unused =
        columns.stream()
            .filter(column -> !positions.containsValue(column.number() - 1))
            .map(column -> column.name() + " (" + values(column) + ')')
            .toList();
    if (!unused.isEmpty()) {
      say("  Not used: " + String.join(", ", unused) + '.');
    }
    columns.stream()
        .filter(
            column ->
                positions.getOrDefault(Field.PIECES.id(), -1) == column.number() - 1
                    || GuessWords.isOfPacks(column.title()))
        .findFirst()
        .ifPresent(
            column ->
                say(
                    "  Each weighing counts as one pack, whatever %s says."
                        .formatted(column.name())));
  }

  private static String values(GuessTable.Column column) {
    var values = column.cells().stream().distinct().toList();
    var shown =
        values.stream()
            .limit(SHOWN_VALUES)
            .map(v -> v.isEmpty() ? "blank" : RowWords.cut(v))
            .toList();
    int more = values.size() - shown.size();
    return String.join("; ", shown) + (more > 0 ? "; and " + more + " more" : "");
  }

  private void rows(AsRead read, ExportSample sample) {
    if (read.rows().isEmpty()) {
      return;
    }
    if (asked.isEmpty()) {
      say("  The first rows, and how each is read:");
      read.rows().stream().limit(SHOWN_ROWS).forEach(this::row);
      if (read.rows().size() > SHOWN_ROWS) {
        say("  The last row:");
        row(read.rows().get(read.rows().size() - 1));
      }
      cancelled(read);
    }
    long files = read.rows().stream().map(row -> row.place().file()).distinct().count();
    var times =
        read.rows().stream().map(RowWords::time).filter(time -> !time.isEmpty()).sorted().toList();
    var counted = read.rows().stream().filter(r -> AsRead.counts(r, read.comparison())).toList();
    var weights = new TreeMap<String, BigDecimal>();
    for (var row : counted) {
      weights.merge(
          row.unit().orElseThrow().id(), AsRead.weight(row).orElseThrow(), BigDecimal::add);
    }
    say(
        "  %s%d rows%s, of which %d %s, %s in all."
            .formatted(
                files == MOST_FILES ? "In the first and last files " : "",
                read.rows().size(),
                times.isEmpty()
                    ? " without a time"
                    : " from " + times.get(0) + " to " + times.get(times.size() - 1),
                counted.size(),
                counted.size() == 1 ? "counts" : "count",
                weights.isEmpty()
                    ? "nothing"
                    : weights.entrySet().stream()
                        .map(sum -> sum.getValue().toPlainString() + ' ' + sum.getKey())
                        .collect(Collectors.joining(" and "))));
    if (!times.isEmpty() && times.stream().allMatch(time -> time.endsWith("T00:00"))) {
      warn(
          "  No row has a clock time: all count as 00:00. If a column has it, name it: column.clock=");
    }
    for (var total : PrintedTotals.of(sample.files(), read, asOf)) {
      if (total.agrees()) {
        say("  " + total.says());
      } else {
        warn("  " + total.says());
        unsettled = true;
      }
    }
    var forgotten = read.withoutTare();
    if (!forgotten.isEmpty()) {
      warn(
          "  Rows without a tare, though most have one: %d; the first is %s. If it was forgotten, correct"
                  .formatted(forgotten.size(), RowWords.shortly(forgotten.get(0)))
              + " tare, and net if there is one, in corrections.csv.");
    }
    var bad = read.rows().stream().filter(row -> AsRead.problem(row).isPresent()).toList();
    if (!bad.isEmpty() && asked.isEmpty()) {
      warn(
          "  %d of them cannot be used as they stand; the first is %s: %s"
              .formatted(
                  bad.size(),
                  bad.get(0).place(),
                  RowWords.cut(AsRead.problem(bad.get(0)).orElseThrow())));
    }
  }

  /** Says how a row is read, below it as it stands. */
  private void row(ReadRow row) {
    say("    " + RowWords.cut(row.row().raw()));
    say("      = " + RowWords.told(row));
  }

  /** Says which weighings are cancelled, and by which rows, and which stand again. */
  private void cancelled(AsRead read) {
    var repeats =
        read.rows().stream()
            .filter(row -> read.comparison().disposition(row) == RowDisposition.REPEAT)
            .toList();
    if (!repeats.isEmpty()) {
      say(
          "  Rows that stand again, so that they do not count twice: %d; the first is %s."
              .formatted(repeats.size(), RowWords.shortly(repeats.get(0))));
    }
    var cancelled = read.cancelled();
    if (!cancelled.isEmpty()) {
      say("  Cancelled, so that they do not count:");
    }
    for (var row : cancelled.subList(0, Math.min(SHOWN_CANCELLED, cancelled.size()))) {
      var by = read.comparison().cancelledBy(row).orElseThrow();
      boolean numbered = !by.row().get(Field.TICKET).equals(row.row().get(Field.TICKET));
      say(
          "    %s: by %s%s"
              .formatted(
                  RowWords.shortly(row),
                  by == row ? "its own status" : by.place(),
                  numbered ? ", " + RowWords.cell(Field.TICKET, by) : ""));
    }
    if (cancelled.size() > SHOWN_CANCELLED) {
      say("    and %d more".formatted(cancelled.size() - SHOWN_CANCELLED));
    }
  }

  // What is proposed.

  /** The questions that a saved layout leaves open; none if there is no layout. */
  private static List<Question> open(
      AsRead read, LayoutDraft draft, Layouts.Choice choice, boolean saved) {
    return draft.questions().stream()
        .filter(question -> saved && !isAnswered(question, choice, draft))
        .filter(
            question ->
                read.fault().isPresent()
                    || question.isSilent()
                    || draft.row(question).flatMap(read::row).flatMap(AsRead::problem).isPresent())
        .toList();
  }

  /** Says how exports are read, and asks what is open. */
  private void confirm(AsRead read, LayoutDraft draft, Layouts.Choice choice, List<Question> open)
      throws IOException {
    boolean isColumnAsked =
        open.stream()
            .flatMap(question -> question.options().stream().flatMap(List::stream))
            .anyMatch(line -> line.startsWith("column."));
    read.fault().filter(fault -> !isColumnAsked).ifPresent(fault -> say("  " + fault));
    boolean readable = read.fault().isEmpty();
    ask(open, draft);
    if (readable) {
      isForTheEnd = asked.isEmpty() && !read.isWrong();
      columns(read, draft, false);
      rows(read, draft.sample());
      isForTheEnd = false;
    }
    var all = open.isEmpty() ? read : read(draft, answered(draft, open, List.of()));
    if (all.fault().isEmpty() && (open.isEmpty() || !draft.isWithheld("code"))) {
      codes.add(all, draft.table());
    }
    var missing = draft.lines().stream().skip(choice.lines().size()).toList();
    if (choice.saved().isPresent() && !missing.isEmpty()) {
      String file = choice.layout().place().file();
      say("  Lines that are missing in " + file + "; put them at its end:");
      missing.forEach(line -> say("  " + line));
      proposed.add(draft.name());
      additions.add(Addition.toLayout(file, missing));
    }
  }

  /**
   * Proposes the scales of an export, where no answer to a question changes them; asks whether a
   * column that was not taken names them.
   */
  private void scale(AsRead read, LayoutDraft draft, Layouts.Choice choice, List<Question> open)
      throws IOException {
    var mayName =
        draft.has("scale")
                || choice.settings().containsKey("constant.scale")
                || !isNewScale(draft.name())
            ? Optional.<GuessTable.Column>empty()
            : draft.unused().stream()
                .filter(LayoutProposal::isOfSeveralScales)
                .filter(column -> !meanings.areOfCuts(column))
                .filter(
                    column ->
                        !draft.has("code")
                            || !GuessFields.goWithEachOther(column, draft.column("code")))
                .findFirst();
    if (mayName.isEmpty()) {
      var all = new ArrayList<>(List.of(read));
      for (var question : open) {
        for (var option : question.options()) {
          all.add(read(draft, answered(draft, others(open, question), option)));
        }
      }
      if (scales.add(all)) {
        proposed.add(draft.name());
      }
      return;
    }
    var column = mayName.get();
    var named = List.of(column.line("scale"));
    ask(
        new Question(
            "Does %s (%s) name the scales, or did one scale weigh all?"
                .formatted(column.name(), values(column)),
            List.of(named, List.of("constant.scale=" + draft.name())),
            0),
        open,
        draft);
    proposed.add(draft.name());
  }

  /** Whether a folder has the name of a scale, of the shop or of one that it is to have. */
  private boolean isScale(String name) {
    return shop.scales().containsKey(name) || isNewScale(name);
  }

  /** Whether exports are of a new scale: all scales of the shop have folders of their own. */
  private boolean isNewScale(String name) {
    var known = shop.scales().keySet();
    return !known.contains(name) && folders.containsAll(known);
  }

  private void propose(LayoutDraft draft, boolean unplaced) throws IOException {
    if (draft.lines().isEmpty()) {
      say("  No comma, semicolon, tab, | or blanks divide its lines into columns.");
      return;
    }
    ask(draft.questions(), draft);
    var read = read(draft, draft.lines());
    draft.found().forEach(sentence -> say("  " + sentence));
    columns(read, draft, true);
    if (read.fault().isEmpty()) {
      rows(read, draft.sample());
    }
    if (!draft.isWithheld("code")) {
      codes.add(read(draft, answered(draft, draft.questions(), List.of())), draft.table());
    }
    if (unplaced) {
      say(
          "  Files directly under exports have no layout: make the folder exports/"
              + draft.name()
              + " for them.");
    }
    say("  A layout that reads it so; save as " + draft.path() + ":");
    proposed.add(draft.name());
    draft.lines().forEach(line -> say("  " + line));
    additions.add(Addition.toLayout(draft.path(), draft.lines()));
  }

  /** Exports as some lines read them, as if scales.csv had their scale. */
  private AsRead read(LayoutDraft draft, List<String> lines) throws IOException {
    var known = readings.get(lines);
    if (known == null) {
      var choice = layouts.proposed(lines, draft.path(), draft.name());
      known = AsRead.of(folder, draft.sample().paths(), choice, shop, asOf);
      readings.put(List.copyOf(lines), known);
    }
    return known;
  }

  /** The lines of a layout with an answer, and behind it the first answers to other questions. */
  private static List<String> answered(
      LayoutDraft draft, List<Question> others, List<String> answer) {
    return Stream.of(
            draft.lines().stream(),
            answer.stream(),
            others.stream().flatMap(other -> other.options().get(0).stream()))
        .flatMap(lines -> lines)
        .toList();
  }

  /** Asks questions, each with a row and how it would be read by each answer. */
  private void ask(List<Question> questions, LayoutDraft draft) throws IOException {
    for (var question : questions) {
      ask(question, others(questions, question), draft);
    }
  }

  private static List<Question> others(List<Question> all, Question one) {
    return all.stream().filter(other -> other != one).toList();
  }

  private void ask(Question question, List<Question> others, LayoutDraft draft) throws IOException {
    var row = draft.row(question);
    var told = new ArrayList<String>();
    told.add("  %d. To be answered: %s".formatted(asked.size() + 1, question.asks()));
    row.ifPresent(of -> told.add("    " + RowWords.cut(of.csv().raw())));
    var reads = new ArrayList<AsRead>();
    for (var option : question.options()) {
      reads.add(read(draft, answered(draft, others, option)));
    }
    var files = draft.sample().files();
    var totals = reads.stream().map(read -> PrintedTotals.of(files, read, asOf)).toList();
    long agree = totals.stream().filter(of -> of.stream().allMatch(Compared::agrees)).count();
    for (int i = 0; i < reads.size(); i++) {
      question.options().get(i).forEach(line -> told.add("    " + line));
      var read = reads.get(i);
      var as = row.flatMap(read::row);
      as.ifPresent(is -> told.add("      = " + RowWords.told(is)));
      as.stream()
          .flatMap(is -> read.takenAwayBy(is).stream())
          .forEach(other -> told.add("      = also takes away " + RowWords.shortly(other)));
      boolean confirmed =
          totals.get(i).stream().allMatch(Compared::agrees)
              && totals.get(i).stream().anyMatch(Compared::confirms);
      if (agree == 1 && confirmed && reads.size() > 1) {
        told.add("      = and only so its rows come to the total that the file ends with");
      }
    }
    asked.add(told);
    if (question.isOfStatus()) {
      askedOf.add(draft.name());
    }
  }

  /** The only scale, else a name to be replaced. */
  private String folderFor() {
    return shop.scales().size() == 1 ? shop.scales().keySet().iterator().next() : "SCALE";
  }
}
