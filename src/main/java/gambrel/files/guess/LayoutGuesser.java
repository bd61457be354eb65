package gambrel.files.guess;

import gambrel.files.csv.TextLine;
import gambrel.files.layout.Layout;
import gambrel.trade.shop.Shop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Writes a layout for the beginning of an export, with a sentence for each guess. */
final class LayoutGuesser {
  private final GuessTable table;
  private final GuessTimes times;
  private final GuessNumbers numbers;
  private final Map<String, GuessFields.Choice> fields;
  private final boolean scaleKnown;
  private final List<String> found = new ArrayList<>();
  private final List<String> layout = new ArrayList<>();

  /**
   * A guess at one export.
   *
   * @param lines its first lines
   * @param scaleKnown whether its folder has the name of a scale
   */
  LayoutGuesser(List<TextLine> lines, GuessTimes times, Shop shop, boolean scaleKnown) {
    this.table = GuessTable.of(lines);
    this.times = times;
    this.numbers = new GuessNumbers(table);
    this.scaleKnown = scaleKnown;
    this.fields = new GuessFields(table, times, numbers, shop).best();
  }

  /**
   * The guess.
   *
   * @param charset the name of the file's character set
   */
  LayoutGuess guess(String file, String saveAs, String charset) {
    if (table.columns().isEmpty()) {
      found.add("No comma, semicolon, tab or | divides its lines into columns.");
      return new LayoutGuess(file, saveAs, found, layout);
    }
    layout.add("# Guessed from the first lines of " + file + ".");
    if (!charset.equals("UTF-8")) {
      setting("Its characters are not UTF-8.", "charset=" + charset);
    }
    addForm();
    addNumbers();
    GuessWords.columns().stream().filter(fields::containsKey).forEach(this::addField);
    addMissing();
    return new LayoutGuess(file, saveAs, found, layout);
  }

  private void setting(String reason, String... lines) {
    found.add(onOneLine(reason));
    layout.add("# " + onOneLine(reason));
    List.of(lines).forEach(line -> layout.add(onOneLine(line)));
  }

  private static String onOneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ");
  }

  private void addForm() {
    String delimiter = table.delimiter() == '\t' ? "tab" : Character.toString(table.delimiter());
    String most = ": most lines have " + table.columns().size() + ".";
    setting("Cells stand between " + quoted(delimiter) + most, "delimiter=" + delimiter);
    if (table.skip() > 0) {
      setting("The table begins on line " + (table.skip() + 1) + ".", "skip=" + table.skip());
    }
    if (table.header()) {
      var headers = table.columns().stream().map(GuessTable.Column::reference).toList();
      found.add("Its header: " + String.join(", ", headers) + ".");
    } else {
      setting("Its first row holds figures, so it has no header.", "header=no");
    }
    var starts = new TreeSet<String>();
    table.odd().forEach(line -> starts.add(firstWord(line)));
    starts.remove("");
    if (!starts.isEmpty()) {
      String words = String.join("|", starts);
      setting("Lines that are no rows begin with " + words + ".", "ignore=^(" + words + ")");
    }
  }

  private static String quoted(String text) {
    return '"' + text + '"';
  }

  /** The letters at the beginning of a line; other characters could be parts of an expression. */
  private static String firstWord(String line) {
    return line.strip().replaceFirst("(?s)^(\\p{L}*).*", "$1");
  }

  private void addNumbers() {
    boolean comma = numbers.hasDecimalComma();
    if (comma) {
      String doubt = numbers.undecided() ? "; it could be one of thousands: look" : "";
      setting("The decimal mark is a comma" + doubt + ".", "decimal=,");
    } else if (numbers.undecided()) {
      found.add("The point in its numbers is taken for the decimal mark; look.");
    }
    numbers
        .thousands()
        .filter(mark -> mark != (comma ? ',' : '.'))
        .map(mark -> mark == ' ' ? "space" : Character.toString(mark))
        .ifPresent(
            mark -> setting("Thousands are set off by " + quoted(mark) + ".", "thousands=" + mark));
  }

  private void addField(String field) {
    var choice = fields.get(field);
    var column = choice.column();
    String where = column.header().isEmpty() ? column.reference() : quoted(column.reference());
    String reason = field + " is column " + where + ": " + choice.reasons() + ".";
    setting(reason, "column." + field + "=" + column.reference().replace("\\", "\\\\"));
    addPattern(field, column);
    addWords(field, column);
    String unit = field.equals("net") || field.equals("gross") ? GuessNumbers.unit(column) : "";
    if (!unit.isEmpty() && layout.stream().noneMatch(line -> line.startsWith("unit="))) {
      layout.add("unit=" + unit);
    }
  }

  private void addPattern(String field, GuessTable.Column column) {
    times
        .pattern(field, column.values())
        .filter(pattern -> !pattern.text().isEmpty())
        .ifPresent(
            pattern -> {
              if (!pattern.other().isEmpty()) {
                setting("It could also be " + pattern.other() + "; look.");
              }
              layout.add(field + "=" + pattern.text());
            });
  }

  /** Adds lines for the shop to complete: the meaning of foreign words and in-store numbers. */
  private void addWords(String field, GuessTable.Column column) {
    if (field.equals("status")) {
      new TreeSet<>(column.values())
          .forEach(
              word ->
                  setting(
                      "A status " + quoted(word) + ": say whether it means ok or void.",
                      "#value.status." + word.replace("\\", "\\\\") + "=void"));
    }
    if (field.equals(Layout.BARCODE)
        && column.values().stream().allMatch(value -> value.matches("\\d+"))) {
      setting(
          "In-store numbers: say how they are laid out (I item, W weight, C check digit).",
          "#instore=20IIIIIWWWWWC",
          "#instore.decimals=3");
    }
  }

  private void addMissing() {
    boolean barcode = fields.containsKey(Layout.BARCODE);
    boolean time = fields.containsKey("time") || fields.containsKey("date") || barcode;
    boolean net = fields.containsKey("net") || fields.containsKey("gross") || barcode;
    boolean scale = fields.containsKey("scale") || scaleKnown;
    need(scale, "scale", "name the folder after the scale, or say which it is", "constant.scale=");
    need(time, "time", "say which column it is and how it is written", "column.time=");
    need(
        fields.containsKey("code") || barcode,
        "code",
        "say which column it is, or one code for all rows",
        "column.code=");
    need(net, "net", "say which column it is", "column.net=");
    need(
        fields.containsKey("body") || barcode,
        "body",
        "say which column it is, or fill it by bench.csv",
        "column.body=");
    need(
        fields.containsKey("ticket"),
        "ticket",
        "if the scale counts none, these make a weighing",
        "identity=time,body,code,net");
  }

  private void need(boolean found, String field, String what, String line) {
    if (!found) {
      setting("No column looks like " + field + ": " + what + ".", "#" + line);
    }
  }
}
