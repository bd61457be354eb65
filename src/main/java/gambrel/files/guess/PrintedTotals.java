package gambrel.files.guess;

import gambrel.files.csv.TextLine;
import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.trade.rows.ReadRow;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares the total that a scale prints below its rows with the rows.
 *
 * @param file the export with all its lines
 * @param rows its rows as they are read
 * @param asOf the moment of the run
 */
record PrintedTotals(SampleFile file, List<ReadRow> rows, OffsetDateTime asOf) {
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?<!\\d)\\d{1,3}(?:[%s]\\d{3}(?!\\d))+(?:[.,]\\d+)?|\\d(?:[\\d.,'’]*\\d)?"
              .formatted(GuessNumbers.BLANKS));
  private static final Pattern BEFORE_BLANK = Pattern.compile(".*[" + GuessNumbers.BLANKS + "]");

  /**
   * A total beside the rows of its file.
   *
   * @param says how they compare, as a line
   * @param agrees whether the rows that count come to the total
   */
  record Compared(String says, boolean agrees) {}

  /** The total of each file that ends with one. */
  static List<Compared> of(List<SampleFile> files, List<ReadRow> rows, OffsetDateTime asOf) {
    var byFile = rows.stream().collect(Collectors.groupingBy(row -> row.place().file()));
    return files.stream()
        .filter(file -> byFile.containsKey(file.path()))
        .flatMap(file -> new PrintedTotals(file, byFile.get(file.path()), asOf).compared().stream())
        .toList();
  }

  private Optional<Compared> compared() {
    int last = rows.stream().mapToInt(row -> row.place().line()).max().orElseThrow();
    var weights = rows.stream().flatMap(row -> AsRead.weight(row).stream()).toList();
    var most = weights.stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
    int decimals = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
    var below =
        file.lines().stream()
            .filter(line -> line.number() > last)
            .filter(line -> figures(line, decimals).anyMatch(total -> total.compareTo(most) >= 0))
            .findFirst();
    return below.map(line -> compared(line, figures(line, decimals)));
  }

  /** How the figures of a total compare with the rows that count. */
  private Compared compared(TextLine line, Stream<BigDecimal> totals) {
    boolean usable =
        rows.stream().noneMatch(r -> AsRead.problem(r).isPresent() && AsRead.weight(r).isPresent());
    var sum = sum(AsRead.counted(rows, asOf));
    var difference = totals.map(sum::subtract).min(Comparator.comparing(BigDecimal::abs)).get();
    boolean agrees = usable && difference.signum() == 0;
    String how =
        agrees
            ? "the sum of its rows that count."
            : usable
                ? differs(sum, difference)
                : "not compared yet, as some of its rows cannot be used as they stand.";
    return new Compared(
        "%s ends with \"%s\": %s".formatted(file.path(), line.text().strip(), how), agrees);
  }

  private String differs(BigDecimal sum, BigDecimal difference) {
    var cancelling = sum(rows.stream().filter(row -> row.status().isVoid()).toList());
    return "its rows that count come to %s, %s %s%s"
        .formatted(
            sum.toPlainString(),
            difference.abs().toPlainString(),
            difference.signum() > 0 ? "more" : "less",
            difference.abs().compareTo(cancelling.abs()) == 0
                ? ". Its rows with the status void weigh as much: look at void= in its layout."
                : ". Compare them by hand.");
  }

  private static BigDecimal sum(List<ReadRow> rows) {
    return rows.stream()
        .flatMap(row -> AsRead.weight(row).stream())
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * The figures of a line that have as many decimals as the weights. A blank is a mark of thousands
   * or stands between two figures: both are tried.
   */
  private static Stream<BigDecimal> figures(TextLine line, int decimals) {
    return FIGURE
        .matcher(line.text())
        .results()
        .map(MatchResult::group)
        .flatMap(text -> Stream.of(text, BEFORE_BLANK.matcher(text).replaceFirst("")))
        .filter(text -> decimals == 0 || text.matches(".*[.,]\\d{" + decimals + '}'))
        .map(text -> new BigDecimal(text.replaceAll("\\D", "")).movePointLeft(decimals));
  }
}
