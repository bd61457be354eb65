package gambrel.files.guess;

import gambrel.files.barcode.ElementString;
import gambrel.files.csv.BadCell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds which column of a table is which, the surest first. */
final class GuessFields {
  private static final int BY_SUM = 100;
  private static final int BY_KNOWN = 80;
  private static final int BY_CONTENT = 50;
  private static final int BY_FORM = 10;

  private final GuessTable table;
  private final GuessTimes times;
  private final GuessNumbers numbers;
  private final GuessKnown known;
  private final List<Choice> choices = new ArrayList<>();

  GuessFields(GuessTable table, GuessTimes times, GuessNumbers numbers, GuessKnown known) {
    this.table = table;
    this.times = times;
    this.numbers = numbers;
    this.known = known;
  }

  /**
   * A column of the export that could be one of ours.
   *
   * @param field ours
   * @param column theirs
   * @param score how surely
   * @param reasons why, in a few words
   */
  record Choice(String field, GuessTable.Column column, int score, String reasons) {}

  /** The best choice for each field for which there is one; no column serves two. */
  Map<String, Choice> best() {
    for (var sum : numbers.sums(table)) {
      choices.add(new Choice("gross", sum.gross(), BY_SUM, "gross less tare is net"));
      choices.add(new Choice("tare", sum.tare(), BY_SUM, "gross less tare is net"));
      choices.add(new Choice("net", sum.net(), BY_SUM, "gross less tare is net"));
    }
    for (var column : table.columns()) {
      GuessWords.columns().forEach(field -> add(field, column));
    }
    choices.sort(
        Comparator.comparingInt(Choice::score)
            .reversed()
            .thenComparing(choice -> GuessWords.columns().indexOf(choice.field()))
            .thenComparing(choice -> choice.column().number()));
    var best = new LinkedHashMap<String, Choice>();
    var taken = new HashSet<Integer>();
    for (var choice : choices) {
      boolean free = !taken.contains(choice.column().number()) && !clashes(choice, best);
      if (free && best.putIfAbsent(choice.field(), choice) == null) {
        taken.add(choice.column().number());
      }
    }
    return best;
  }

  /** Times stand in one column or in two. */
  private static boolean clashes(Choice choice, Map<String, Choice> best) {
    return switch (choice.field()) {
      case "time" -> best.containsKey("date") || best.containsKey("clock");
      case "date", "clock" -> best.containsKey("time");
      default -> false;
    };
  }

  private void add(String field, GuessTable.Column column) {
    var reasons = new ArrayList<String>();
    int score = GuessWords.score(field, column.header());
    if (score > 0) {
      reasons.add("its header");
    }
    long named = known.count(field, column.values());
    if (named > 0 && named * 2 >= column.values().size()) {
      score += BY_KNOWN;
      reasons.add(named + " of " + column.values().size() + " values are in the shop's files");
    }
    int content = content(field, column, reasons);
    if (content >= 0 && score + content > 0) {
      choices.add(new Choice(field, column, score + content, String.join(", ", reasons)));
    }
  }

  /** What the values add to a guess; below zero if they rule it out. */
  private int content(String field, GuessTable.Column column, List<String> reasons) {
    var values = column.values();
    return switch (field) {
      case "time" -> ofTime(times.time(values).isPresent(), values, reasons);
      case "date" -> ofTime(times.date(values).isPresent(), values, reasons);
      case "clock" -> ofTime(times.clock(values).isPresent(), values, reasons);
      case "barcode" -> ofBarcode(values, reasons);
      case "net", "gross", "tare" -> ofWeight(field, column, reasons);
      case "pieces" -> isWhole(column) ? 0 : -1;
      case "ticket" -> isCounting(values) ? formed(reasons, "it counts up") : 0;
      default -> 0;
    };
  }

  /** Digits without any mark between them could be anything; their header must say what. */
  private static int ofTime(boolean fits, List<String> values, List<String> reasons) {
    if (!fits) {
      return -1;
    }
    reasons.add("values such as " + values.get(0));
    return values.stream().anyMatch(value -> !value.matches("\\d*")) ? BY_CONTENT : 0;
  }

  private int ofWeight(String field, GuessTable.Column column, List<String> reasons) {
    if (numbers.numbers(column).isEmpty()) {
      return -1;
    }
    boolean bare = column.values().isEmpty() || isWhole(column);
    return field.equals("net") && !bare
        ? formed(reasons, "values such as " + column.values().get(0))
        : 0;
  }

  private static int formed(List<String> reasons, String reason) {
    reasons.add(reason);
    return BY_FORM;
  }

  private static int ofBarcode(List<String> values, List<String> reasons) {
    if (!values.isEmpty() && values.stream().allMatch(GuessFields::isElementString)) {
      reasons.add("GS1 element strings");
      return BY_KNOWN;
    }
    boolean numbers = values.stream().allMatch(value -> value.matches("\\d{12,13}"));
    return numbers && !values.isEmpty() ? formed(reasons, "12 or 13 digits") : -1;
  }

  private static boolean isElementString(String text) {
    try {
      ElementString.parse(text);
      return text.startsWith("]") || text.startsWith("(");
    } catch (BadCell e) {
      return false;
    }
  }

  private static boolean isWhole(GuessTable.Column column) {
    return column.values().stream().allMatch(value -> value.matches("\\d{1,4}"));
  }

  private static boolean isCounting(List<String> values) {
    if (values.size() < 2 || !values.stream().allMatch(value -> value.matches("\\d{1,9}"))) {
      return false;
    }
    for (int i = 1; i < values.size(); i++) {
      if (Integer.parseInt(values.get(i)) <= Integer.parseInt(values.get(i - 1))) {
        return false;
      }
    }
    return true;
  }
}
