package gambrel.files.folder;

import gambrel.Shuffle;
import gambrel.trade.rows.Field;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;

/** A way of writing exports that is made up at random, and the layout that describes it. */
public final class ForeignMake {
  private static final String DATE = "date";
  private static final String CLOCK = "clock";
  private static final List<String> DATES =
      List.of("dd/MM/yyyy", "yyyyMMdd", "d.M.yy", "MMM d yyyy");
  private static final List<String> CLOCKS = List.of("HH:mm:ss", "hh.mm.ss a", "HHmmss");

  private final SplittableRandom random;
  private final char delimiter;
  private final char quote;
  private final char decimal;
  private final String thousands;
  private final String charset;
  private final boolean header;
  private final boolean inTwo;
  private final boolean unitInCell;
  private final String date;
  private final String clock;
  private final int skip;
  private final List<String> columns;
  private final List<String> codes;

  /** A make of plain codes. */
  ForeignMake(SplittableRandom random) {
    this(random, List.of());
  }

  /**
   * A make, wholly decided by {@code random}.
   *
   * @param codes those that it writes in a way of its own
   */
  public ForeignMake(SplittableRandom random, Collection<String> codes) {
    this.codes = List.copyOf(codes);
    this.random = random;
    delimiter = pick(List.of(',', ';', '\t', '|'));
    quote = pick(List.of('"', '\''));
    decimal = pick(List.of('.', ','));
    thousands = pick(List.of("", decimal == '.' ? "," : ".", " "));
    charset = pick(List.of("UTF-8", "UTF-16", "UTF-16LE", "windows-1252"));
    header = random.nextBoolean();
    inTwo = random.nextBoolean();
    unitInCell = random.nextBoolean();
    date = pick(DATES);
    clock = pick(CLOCKS);
    skip = random.nextInt(3);
    columns = columns();
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private List<String> columns() {
    var all = new ArrayList<>(List.of("scale", "ticket", "body", "code", "net", "gross", "status"));
    all.addAll(List.of("tare", "pieces", "batch", "customer", "operator"));
    all.addAll(inTwo ? List.of(DATE, CLOCK) : List.of("time"));
    all.addAll(unitInCell ? List.of("junk") : List.of("unit", "junk"));
    Shuffle.inPlace(all, random);
    return all;
  }

  /** The layout that describes it. */
  public String layout() {
    var text = new StringBuilder();
    text.append("delimiter=").append(delimiter == '\t' ? "tab" : delimiter + "").append('\n');
    text.append("quote=").append(quote).append("\ndecimal=").append(decimal).append('\n');
    if (!thousands.isEmpty()) {
      text.append("thousands=").append(thousands.equals(" ") ? "space" : thousands).append('\n');
    }
    text.append("charset=").append(charset).append("\nskip=").append(skip).append('\n');
    text.append("header=").append(header ? "yes" : "no").append("\nignore=^=+ \\d+ =+$\n");
    text.append(
        inTwo ? "date=" + date + "\nclock=" + clock + "\n" : "time=" + date + " " + clock + "\n");
    text.append("value.status.ungültig !=void\n");
    codes.forEach(c -> text.append("value.code.PLU ").append(c).append('=').append(c).append('\n'));
    for (int i = 0; i < columns.size(); i++) {
      String column = columns.get(i);
      if (!column.equals("junk")) {
        text.append("column.").append(column).append('=');
        text.append(header && random.nextBoolean() ? name(column) : i + 1 + "").append('\n');
      }
    }
    return text.toString();
  }

  private static String name(String column) {
    return "Feld " + column.toUpperCase(Locale.ROOT);
  }

  /**
   * Rows as it writes them. Times are whole local seconds in ISO 8601; a unit, where it is given,
   * fits the row's weights.
   */
  public byte[] export(List<Map<Field, String>> rows) {
    var text = new StringBuilder();
    text.append("\"day book\n".repeat(skip));
    var format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).setQuote(quote).get();
    try {
      if (header) {
        format.printRecord(text, columns.stream().map(ForeignMake::name).toArray());
      }
      for (var row : rows) {
        format.printRecord(text, columns.stream().map(column -> cell(row, column)).toArray());
        text.append(random.nextInt(3) == 0 ? "\n=== 12 ===\r\n" : "");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(Charset.forName(charset));
  }

  private String cell(Map<Field, String> row, String column) {
    var field = Field.of(column);
    String text = field.map(f -> row.getOrDefault(f, "")).orElse("");
    return switch (column) {
      case "junk" -> "n/a";
      case "net", "gross", "tare" -> text.isEmpty() ? "" : weight(text, row.get(Field.UNIT));
      case "status" -> text.equals("void") ? "ungültig !" : text;
      case "code" -> codes.contains(text) ? "PLU " + text : text;
      case "time" -> time(row, date + " " + clock);
      case DATE -> time(row, date);
      case CLOCK -> time(row, clock);
      default -> text;
    };
  }

  private static String time(Map<Field, String> row, String pattern) {
    return LocalDateTime.parse(row.get(Field.TIME))
        .format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
  }

  private String weight(String plain, String unit) {
    int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
    String whole = plain.substring(0, point);
    if (whole.length() == 4 && !whole.startsWith("-") && !thousands.isEmpty()) {
      whole = whole.charAt(0) + thousands + whole.substring(1);
    }
    String number = whole + plain.substring(point).replace('.', decimal);
    return unitInCell && unit != null ? number + ' ' + unit : number;
  }
}
