package gambrel.files.guess;

import gambrel.files.csv.TextLine;
import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.layout.Layout;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares the total, or else the count, that a scale prints below its rows with the rows.
 *
 * @param file the export with all its lines
 * @param rows its rows as they are read
 * @param comparison which of them do not count, by themselves
 * @param read how all files are read
 */
record PrintedTotals(SampleFile file, List<ReadRow> rows, RowComparison comparison, AsRead read) {
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<!\\d)\\d{1,3}(?:[%s]\\d{3}(?!\\d))+(?:[.,]\\d+)?|\\d+(?:[.,'’]\\d+)*"
              .formatted(GuessNumbers.BLANKS));
  private static final Pattern BEFORE_BLANK = Pattern.compile(".*[" + GuessNumbers.BLANKS + "]");

  /** A line with one whole number, such as {@code 26 records}. */
  private static final Pattern COUNT = Pattern.compile("\\D*\\b0*(\\d{1,6})\\b\\D*");

  /** A clock time or a date, which is no figure of a total. */
  private static final Pattern TIME =
      Pattern.compile("\\d{1,4}([.:/-])\\d\\d\\1\\d{2,4}(?!\\d)|(?<!\\d)20\\d{6}(?!\\d)");

  private static final int MOST_NAMED = 10;

  /** A file with more lines between its rows has one below each row. */
  private static final int MOST_BLOCKS = 20;

  /**
   * A total beside the rows of its file.
   *
   * @param says how they compare, as a line
   * @param agrees whether some of the rows come to it, so that nothing is open
   * @param confirms whether those that count do so by their weight, so that they are read right
   */
  record Compared(String says, boolean agrees, boolean confirms) {}

  /** The total of each file that ends with one. */
  static List<Compared> of(List<SampleFile> files, AsRead read, OffsetDateTime asOf) {
    var byFile = read.rows().stream().collect(Collectors.groupingBy(row -> row.place().file()));
    return files.stream()
        .filter(file -> byFile.containsKey(file.path()))
        .flatMap(
            file -> {
              var rows = byFile.get(file.path());
              var comparison = RowComparison.of(rows, asOf);
              return new PrintedTotals(file, rows, comparison, read).compared().stream();
            })
        .toList();
  }

  private Optional<Compared> compared() {
    int last = rows.get(rows.size() - 1).place().line();
    var weights = rows.stream().flatMap(row -> AsRead.weight(row).stream()).toList();
    var most = weights.stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
    int decimals = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
    var below = file.lines().stream().filter(line -> line.number() > last).toList();
    var totals =
        below.stream()
            .filter(line -> figures(line, decimals).anyMatch(total -> total.compareTo(most) >= 0))
            .toList();
    if (rows.stream()
        .anyMatch(row -> AsRead.problem(row).isPresent() && AsRead.weight(row).isPresent())) {
      String how = "not compared yet, as some of its rows cannot be used as they stand.";
      return totals.stream().findFirst().map(line -> compared(line, how, false, false));
    }
    return first(
            totals,
            "sum",
            (line, of) -> figures(line, decimals).anyMatch(total -> total.compareTo(sum(of)) == 0))
        .or(
            () ->
                totals.stream()
                    .findFirst()
                    .map(of -> compared(of, differs(figures(of, decimals)), false, false)))
        .or(() -> first(below, "number", PrintedTotals::isCount));
  }

  /** The first line that agrees with some of the rows. */
  private Optional<Compared> first(
      List<TextLine> lines, String what, BiPredicate<TextLine, List<ReadRow>> agree) {
    var parts = lines.isEmpty() ? Map.<String, List<ReadRow>>of() : parts();
    for (var part : parts.entrySet()) {
      for (var line : lines) {
        if (agree.test(line, part.getValue())) {
          String not = notCounted(part.getValue(), what);
          String how = "it agrees with the %s of %s%s.".formatted(what, part.getKey(), not);
          return Optional.of(compared(line, how, true, what.equals("sum") && not.isEmpty()));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isCount(TextLine line, List<ReadRow> rows) {
    var count = COUNT.matcher(TIME.matcher(line.text()).replaceAll(""));
    return count.matches() && Integer.parseInt(count.group(1)) == rows.size();
  }

  private Compared compared(TextLine line, String how, boolean agrees, boolean confirms) {
    String says = "%s ends with \"%s\": %s".formatted(file.path(), line.text().strip(), how);
    return new Compared(says, agrees, confirms);
  }

  /** By name what a scale may sum up: the whole file, or what follows some line between rows. */
  private Map<String, List<ReadRow>> parts() {
    var lines = new TreeSet<Integer>();
    rows.forEach(row -> lines.add(row.place().line()));
    var parts = new LinkedHashMap<String, List<ReadRow>>();
    addParts(parts, "its rows", "all " + rows.size() + " rows", rows);
    file.lines().stream()
        .filter(line -> !line.isBlank() && !lines.contains(line.number()))
        .map(TextLine::number)
        .filter(number -> number > lines.first() && number < lines.last())
        .sorted(Comparator.reverseOrder())
        .map(above -> only(rows, row -> row.place().line() > above))
        .limit(MOST_BLOCKS)
        .forEach(
            block -> {
              String name = "its last " + block.size() + " rows";
              addParts(parts, "those of " + name, name, block);
            });
    return parts;
  }

  private void addParts(
      Map<String, List<ReadRow>> parts, String those, String all, List<ReadRow> of) {
    var counted = only(of, row -> AsRead.counts(row, comparison));
    boolean isOnlyHere = counted.stream().allMatch(row -> AsRead.counts(row, read.comparison()));
    parts.put(those + (isOnlyHere ? " that count" : ", some of them also in other files"), counted);
    parts.put(
        those + " that count and those that corrections.csv removes",
        only(of, row -> row.removed() || AsRead.counts(row, comparison)));
    parts.put(
        those + " that count and name a body",
        only(of, r -> AsRead.counts(r, comparison) && !r.row().get(Field.BODY).isEmpty()));
    parts.put(all, of);
    parts.put(
        all + " but the cancelled ones",
        only(of, row -> comparison.disposition(row) != RowDisposition.VOID));
    // By void=before or void=last it is not sure which row is meant: such a total may say that none
    // is.
    var layout = read.layout();
    if (layout.voided().isEmpty() || layout.voids(Layout.Voided.OWN)) {
      parts.put(
          all + " but those that cancel",
          only(of, row -> !row.status().isVoid() || !GuessWords.mentionsVoid(row.row().raw())));
    }
  }

  private static List<ReadRow> only(List<ReadRow> rows, Predicate<ReadRow> which) {
    return rows.stream().filter(which).toList();
  }

  /** What of a sum does not count, as the end of a sentence; empty if all does. */
  private String notCounted(List<ReadRow> of, String what) {
    var not = only(of, r -> !AsRead.counts(r, read.comparison()) && weight(r).isPresent());
    var why =
        Groups.inOrder(not.stream(), read.comparison()::disposition).entrySet().stream()
            .map(
                group ->
                    switch (group.getKey()) {
                          case VOID -> "cancelled ";
                          case REPEAT -> "repeated ";
                          default -> "set aside ";
                        }
                        + tickets(group.getValue()));
    return not.isEmpty()
        ? ""
        : ", of which %s not count: %s"
            .formatted(
                what.equals("sum") ? sum(not).toPlainString() + " does" : not.size() + " do",
                why.collect(Collectors.joining("; ")));
  }

  private static String tickets(List<ReadRow> rows) {
    var tickets = rows.stream().map(PrintedTotals::ticket).distinct().toList();
    int more = tickets.size() - MOST_NAMED;
    return tickets.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  private static String ticket(ReadRow row) {
    String ticket = row.row().get(Field.TICKET);
    return ticket.isEmpty() ? "line " + row.place().line() : ticket;
  }

  /** How the figures of a total differ from all sums, and what to compare. */
  private String differs(Stream<BigDecimal> figures) {
    var sum = sum(only(rows, row -> AsRead.counts(row, comparison)));
    var difference = figures.map(sum::subtract).min(Comparator.comparing(BigDecimal::abs)).get();
    var cancelling = sum(only(rows, row -> row.status().isVoid()));
    var alike = only(rows, r -> weight(r).filter(w -> isAs(w, difference)).isPresent());
    return "its rows that count come to %s, %s %s, and all %d to %s. %s"
        .formatted(
            sum.toPlainString(),
            difference.abs().toPlainString(),
            difference.signum() > 0 ? "more" : "less",
            rows.size(),
            sum(rows).toPlainString(),
            isAs(cancelling, difference)
                ? "Its rows with the status void weigh as much: look at void= in its layout."
                : "Before you run, find the difference in the scale's print: "
                    + (alike.isEmpty()
                        ? "compare row by row, also the lines that are passed over."
                        : "does %s, which weighs as much, count?".formatted(tickets(alike))));
  }

  private static boolean isAs(BigDecimal weight, BigDecimal difference) {
    return weight.abs().compareTo(difference.abs()) == 0;
  }

  /**
   * The weight of a row as the scale wrote it; none of one that by void=last has only that of the
   * row it cancels.
   */
  private Optional<BigDecimal> weight(ReadRow row) {
    return read.written(row)
        .filter(of -> !row.status().isVoid() || !read.layout().voids(Layout.Voided.LAST));
  }

  private BigDecimal sum(List<ReadRow> rows) {
    return rows.stream()
        .flatMap(row -> weight(row).stream())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * The figures of a line that have as many decimals as the weights. A blank is a mark of thousands
   * or stands between two figures: both are tried.
   */
  private static Stream<BigDecimal> figures(TextLine line, int decimals) {
    return FIGURE
        .matcher(TIME.matcher(line.text()).replaceAll(" "))
        .results()
        .map(MatchResult::group)
        .flatMap(text -> Stream.of(text, BEFORE_BLANK.matcher(text).replaceFirst("")))
        .filter(text -> decimals == 0 || text.matches(".*[.,]\\d{" + decimals + '}'))
        .map(text -> new BigDecimal(text.replaceAll("\\D", "")).movePointLeft(decimals));
  }
}
