package gambrel.files.guess;

import gambrel.files.barcode.ElementString;
import gambrel.files.csv.BadCell;
import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.WeightText;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Shop;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the fields of the columns of a table, the surest first. */
final class GuessFields {
  private static final int BY_SUM = 100;
  private static final int BY_KNOWN = 80;
  private static final int BY_CONTENT = 50;
  private static final int BY_FORM = 10;
  private static final int MOST_STATUSES = 8;

  /** How long after the kill a body is weighed, in weeks. */
  private static final int WEEKS = 8;

  /** A short word or sign, such as a scale prints beside a weight that is not like the others. */
  private static final Pattern MARK = Pattern.compile("[^\\d\\s]{1,12}");

  private static final Set<String> DATED = Set.of("time", "date", "clock", "barcode");

  private final GuessTable table;
  private final GuessTimes times;
  private final GuessNumbers numbers;
  private final Map<String, Predicate<String>> known;
  private final Optional<Scale> scale;
  private final Set<LocalDate> killed;
  private final List<Choice> choices = new ArrayList<>();

  GuessFields(
      GuessTable table, GuessTimes times, GuessNumbers numbers, Shop shop, Optional<Scale> scale) {
    this.table = table;
    this.times = times;
    this.numbers = numbers;
    this.known = known(shop);
    this.scale = scale;
    this.killed =
        shop.bodies().values().stream()
            .flatMap(body -> body.killed().stream())
            .collect(Collectors.toSet());
  }

  /** Tests, by column, whether a text is an id or code of the shop. */
  private static Map<String, Predicate<String>> known(Shop shop) {
    var bodies = new ArrayList<>(shop.bodies().keySet());
    shop.bodies().values().forEach(body -> bodies.addAll(body.tags()));
    var codes = CodeIndex.of(shop);
    return Map.of(
        "body", isWordAndOneOf(bodies),
        "scale", isOneOf(shop.scales().keySet()),
        "customer", isOneOf(shop.customers().keySet()),
        "batch", isOneOf(shop.batches().keySet()),
        "code", text -> codes.find(text).isPresent());
  }

  /** Also with a word before it that stands in each row, as in {@code ID 27A}. */
  private static Predicate<String> isWordAndOneOf(Collection<String> ids) {
    var isOne = isOneOf(ids);
    return text -> isOne.test(text) || isOne.test(text.replaceFirst("^\\p{L}+[^\\p{L}\\d]+", ""));
  }

  private static Predicate<String> isOneOf(Collection<String> ids) {
    var index = new IdIndex(ids);
    return text -> index.find(text).isPresent();
  }

  /**
   * A field that a column of the export could hold.
   *
   * @param field a column of {@link GuessWords#columns}
   * @param column the column of the export
   * @param score how sure it is, the higher the surer
   * @param reasons why, in a few words
   */
  record Choice(String field, Column column, int score, String reasons) {}

  /** The best choice for each field that has one; no column is chosen twice. */
  Map<String, Choice> best() {
    for (var sum : numbers.sums(table)) {
      sum.forEach(
          (field, column) ->
              choices.add(new Choice(field, column, BY_SUM, "gross less tare is net in each row")));
    }
    for (var column : table.columns()) {
      GuessWords.columns().forEach(field -> add(field, column));
    }
    table.heads().forEach(this::addHead);
    choices.sort(
        Comparator.comparingInt(Choice::score)
            .reversed()
            .thenComparing(choice -> GuessWords.columns().indexOf(choice.field()))
            .thenComparing(choice -> choice.column().number()));
    var best = new LinkedHashMap<String, Choice>();
    var taken = new HashSet<Column>();
    for (var choice : choices) {
      boolean free = !taken.contains(choice.column()) && !clashes(choice, best);
      if (free && best.putIfAbsent(choice.field(), choice) == null) {
        taken.add(choice.column());
      }
    }
    // Beside gross and tare a column of another name is no net weight: clocks look like it.
    if (best.keySet().containsAll(List.of("net", "gross", "tare"))
        && best.get("net").score() < BY_SUM
        && name("net", best.get("net").column()) == 0) {
      best.remove("net");
    }
    return best;
  }

  /**
   * The columns, in their order, that fit the field of a choice where neither names nor arithmetic
   * tell which is meant, that of the choice among them.
   *
   * @param best all choices, as {@link #best} returns them
   */
  List<Column> rivals(Choice choice, Map<String, Choice> best) {
    String field = choice.field();
    int name = name(field, choice.column());
    boolean other = GuessWords.isSecond(choice.column().title());
    return table.columns().stream()
        .filter(
            c ->
                c.equals(choice.column())
                    || best.values().stream().noneMatch(taken -> taken.column().equals(c))
                        && (other || !GuessWords.isSecond(c.title()))
                        && !GuessWords.isOther(c.title())
                        && isRival(choice, name, c))
        .toList();
  }

  private boolean isRival(Choice choice, int name, Column column) {
    String field = choice.field();
    int other = name(field, column);
    return switch (field) {
      case "net" ->
          choice.score() < BY_SUM
              && other >= name
              && mayBeWeight(column)
              && (fitsScale(column) || !fitsScale(choice.column()))
              && !isGrossOf(column, choice.column());
      case "time", "date", "clock" -> other >= name && fits(field, column, BY_CONTENT);
      case "body", "code" ->
          other > name && hasDigits(column) && fits(field, column, 0)
              || other == name
                  && fits(field, column, BY_KNOWN)
                  && (areKnown(field, column) || !areKnown(field, choice.column()));
      default -> false;
    };
  }

  private boolean areKnown(String field, Column column) {
    return column.values().stream().allMatch(known.get(field));
  }

  /** How many different values of a column are ids or codes of the shop. */
  private long known(String field, Column column) {
    return column.values().stream().distinct().filter(known.get(field)).count();
  }

  /** Whether the scale could show all weights of a column: its decimals, its division. */
  private boolean fitsScale(Column column) {
    var division = scale.map(Scale::division).map(BigDecimal::stripTrailingZeros);
    var weights = numbers.numbers(column);
    return division.isPresent()
        && changes(column)
        && division.get().scale() > 0
        && weights.isPresent()
        && weights.get().stream()
            .allMatch(
                weight ->
                    weight.scale() >= division.get().scale()
                        && weight.remainder(division.get()).signum() == 0);
  }

  /**
   * Whether most rows have a value of their own, as weights have; a price comes again wherever its
   * code does.
   */
  private boolean changes(Column column) {
    long different = distinct(column.cells());
    return different * 2 > column.values().size()
        && (different == column.cells().size()
            || table.columns().stream().noneMatch(other -> follows(column, other)));
  }

  private static long distinct(List<String> texts) {
    return texts.stream().distinct().count();
  }

  /** Whether a column has the same value wherever another one has, as the price of a code. */
  private static boolean follows(Column column, Column other) {
    long different = distinct(other.cells());
    var both =
        IntStream.range(0, other.cells().size())
            .mapToObj(row -> other.cells().get(row) + '\n' + column.cells().get(row))
            .toList();
    return !column.equals(other) && different < other.cells().size() && distinct(both) == different;
  }

  /** Whether one weight is another one and the same tare in every row. */
  private boolean isGrossOf(Column column, Column net) {
    return numbers.above(column, net).filter(tare -> tare.signum() > 0).isPresent();
  }

  /** Whether a column may hold ids or codes; without any digit it holds their names in words. */
  private static boolean hasDigits(Column column) {
    return column.values().stream().anyMatch(value -> value.matches(".*\\d.*"));
  }

  /** Whether a column is a choice for a field with more than its name, as far as asked. */
  private boolean fits(String field, Column column, int content) {
    return choices.stream()
        .filter(c -> c.field().equals(field) && c.column().equals(column))
        .anyMatch(c -> c.score() - name(field, column) >= content);
  }

  /** Whether a column of numbers that change from row to row is of no other field by its name. */
  boolean mayBeWeight(Column column) {
    int name = name("net", column);
    boolean free =
        GuessWords.columns().stream().allMatch(f -> GuessWords.score(f, column.title()) <= name);
    return free
        && changes(column)
        && numbers.numbers(column).isPresent()
        && !isCounting(column.values())
        && !numbers.isRunningTotal(table, column);
  }

  private static int name(String field, Column column) {
    return GuessWords.isOther(column.title()) ? 0 : GuessWords.score(field, column.title());
  }

  /** Whether a choice would give times both in one column and in two. */
  private static boolean clashes(Choice choice, Map<String, Choice> best) {
    return switch (choice.field()) {
      case "time" -> best.containsKey("date") || best.containsKey("clock");
      case "date", "clock" -> best.containsKey("time");
      default -> false;
    };
  }

  /** What stands above the rows may be the body, if the shop has it, or the day. */
  private void addHead(Column head) {
    if (head.cells().stream().allMatch(known.get("body"))) {
      choices.add(new Choice("body", head, BY_FORM + 1, "on a line above its rows"));
    } else if (!GuessWords.isSecond(head.title())
        && !times.patterns("date", head.cells()).isEmpty()) {
      String why = head.isName() ? "in the names of the files" : "on a line above its rows";
      choices.add(new Choice("date", head, head.isName() ? 1 : 2, why));
    }
  }

  private void add(String field, Column column) {
    var reasons = new ArrayList<String>();
    boolean other = GuessWords.isOther(column.title());
    int score = other ? 0 : GuessWords.score(field, column.title());
    if (score > 0) {
      reasons.add("its name");
    }
    var isKnown = known.getOrDefault(field, text -> false);
    long named = column.values().stream().filter(isKnown).count();
    if (named > 0 && named * 2 >= column.values().size()) {
      score += BY_KNOWN + (int) Math.min(known(field, column), BY_FORM - 1);
      reasons.add(named + " of " + column.values().size() + " values are in the shop's files");
    }
    if (other && score == 0) {
      return;
    }
    if (column.values().isEmpty()) {
      // What is blank today may be filled tomorrow, such as a status.
      if (score > BY_CONTENT / 2 && !DATED.contains(field)) {
        choices.add(new Choice(field, column, score / 2, "its name; blank so far"));
      }
      return;
    }
    int content = content(field, column, reasons);
    if (GuessWords.isSecond(column.title())) {
      // It comes second beside the time at which it was weighed and not printed.
      score--;
    }
    if (content >= 0 && score + content > 0) {
      choices.add(new Choice(field, column, score + content, String.join(", ", reasons)));
    }
  }

  /** The score that the values add to a choice; below zero if they rule it out. */
  private int content(String field, Column column, List<String> reasons) {
    var values = column.values();
    return switch (field) {
      case "time", "date", "clock" ->
          field.equals("date") && isOfKills(values)
              ? BY_CONTENT + formed(reasons, "days soon after a kill")
              : ofTime(!times.patterns(field, values).isEmpty(), values, reasons);
      case "barcode" -> ofBarcode(values, reasons);
      case "net", "gross", "tare" -> ofWeight(field, column, reasons);
      case "pieces" -> isWhole(column) ? 0 : -1;
      case "ticket" -> ofTicket(column, reasons);
      // Letters before weights that have their units say which are gross and net.
      case "unit" ->
          table.columns().stream().anyMatch(GuessFields::isWeighed) ? -1 : ofUnit(values, reasons);
      case "status" -> ofStatus(column, reasons);
      case "body", "code", "scale", "customer" -> isDecimal(values) ? -1 : 0;
      default -> 0;
    };
  }

  /** Whether digits without a mark are all days within some weeks after a kill of the shop. */
  private boolean isOfKills(List<String> values) {
    return values.stream().allMatch(value -> value.matches("\\d{5,8}"))
        && times.patterns("date", values).stream()
            .flatMap(pattern -> times.readings(pattern, values).stream())
            .anyMatch(d -> d.stream().map(LocalDateTime::toLocalDate).allMatch(this::isLater));
  }

  private boolean isLater(LocalDate day) {
    return killed.stream().anyMatch(of -> !day.isBefore(of) && !day.isAfter(of.plusWeeks(WEEKS)));
  }

  /** Of digits without any mark between them only whole years and seconds add to the score. */
  private static int ofTime(boolean fits, List<String> values, List<String> reasons) {
    if (!fits || values.stream().allMatch(value -> value.matches("\\p{L}+\\h*\\d+[.,]\\d+"))) {
      return -1;
    }
    reasons.add("values such as " + values.get(0));
    if (isDecimal(values)) {
      return BY_FORM / 2;
    }
    boolean marked = values.stream().anyMatch(value -> value.matches(".*\\d\\D+\\d.*"));
    if (marked
        || values.stream()
            .allMatch(value -> value.matches("(20\\d{6}|\\d{4}20\\d\\d)(\\d{4}(\\d\\d)?)?"))) {
      return BY_CONTENT;
    }
    return values.stream().allMatch(value -> value.matches("\\d{6}|1[5-9]\\d{8}|1\\d{12}"))
        ? BY_FORM
        : 0;
  }

  private int ofWeight(String field, Column column, List<String> reasons) {
    if (numbers.numbers(column).isEmpty()
        || numbers.isRunningTotal(table, column)
        || column.header().isEmpty() && isClock(column.values())) {
      return -1;
    }
    boolean bare = column.values().stream().allMatch(value -> value.matches("\\d+"));
    if (!field.equals("net")) {
      return 0;
    }
    if (bare) {
      return isBesideUnit(column) ? formed(reasons, "its unit stands beside it") : 0;
    }
    boolean net = table.columns().stream().anyMatch(other -> isGrossOf(other, column));
    return formed(reasons, "values such as " + column.values().get(0))
        + (fitsScale(column) ? formed(reasons, "in steps of the scale's division") : 0)
        + (net ? formed(reasons, "another column is more by the same in every row") : 0);
  }

  /** Whether values such as 6.44 are clock times, which only go back where a day begins. */
  private boolean isClock(List<String> values) {
    var patterns = times.patterns("clock", values);
    if (patterns.isEmpty()
        || values.size() < GuessNumbers.SOME
        || !values.stream().allMatch(value -> value.matches("\\d{1,2}[.]\\d\\d"))) {
      return false;
    }
    var clocks = times.readings(patterns.get(0), values).orElseThrow();
    var back =
        IntStream.range(1, clocks.size()).filter(i -> clocks.get(i).isBefore(clocks.get(i - 1)));
    return back.count() * GuessNumbers.SOME < values.size();
  }

  private boolean isBesideUnit(Column column) {
    return table.columns().stream()
        .filter(other -> other.number() == column.number() + 1 && !other.values().isEmpty())
        .anyMatch(other -> other.values().stream().allMatch(GuessWords::isUnit));
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

  private static boolean isWhole(Column column) {
    return column.values().stream().allMatch(value -> value.matches("\\d{1,4}"));
  }

  private static int ofTicket(Column column, List<String> reasons) {
    var values = column.values();
    if (isCounting(values)) {
      return formed(reasons, "it counts up");
    }
    // A number that is mostly the same tells no weighings apart.
    boolean labels = values.stream().allMatch(value -> value.matches("\\d{12,13}"));
    long same =
        IntStream.range(1, values.size())
            .filter(i -> values.get(i).equals(values.get(i - 1)))
            .count();
    return labels
            || !hasDigits(column)
            || same * 2 > values.size()
            || isDecimal(values)
            || values.stream().distinct().count() * 3 < values.size()
        ? -1
        : 0;
  }

  private static boolean isDecimal(List<String> values) {
    return values.stream().allMatch(value -> value.matches("[+-]?\\d*[.,]\\d+"));
  }

  private static int ofUnit(List<String> values, List<String> reasons) {
    if (!values.stream().allMatch(GuessWords::isUnit)) {
      return -1;
    }
    reasons.add("values such as " + values.get(0));
    return BY_CONTENT;
  }

  /**
   * Few words, or a mark in some of the rows. Where the column is named so, or without a name says
   * ok or stands before gross or net, one word in all rows is enough: that of a cancelled weighing
   * is yet to come.
   */
  private int ofStatus(Column column, List<String> reasons) {
    var words = column.values().stream().map(ProposedStatus::word).distinct().toList();
    boolean few = column.values().size() * 2 < column.cells().size();
    if (few && words.stream().anyMatch(GuessWords::mentionsVoid)) {
      reasons.add("words such as " + words.get(0));
      return BY_KNOWN;
    }
    boolean whole = column.values().size() == column.cells().size();
    boolean counted = !few && words.stream().allMatch(word -> word.matches("\\d+"));
    boolean named =
        name("status", column) > 0
            || column.title().isEmpty()
                && (GuessWords.status(words.get(0), "").equals(Optional.of("ok"))
                    || isBeforeMode(column));
    boolean constant = words.size() == 1 && (whole || counted) && !named;
    boolean figures = words.stream().anyMatch(word -> word.matches(".*\\d{3}.*|.{20,}"));
    if (words.size() > MOST_STATUSES
        || isDecimal(words)
        || constant
        || figures
        || GuessWords.areOfRail(words)
        || GuessWords.areOfSides(words)
        || GuessWords.areOfMode(words)) {
      return -1;
    }
    if (words.stream().anyMatch(GuessWords::isStatus)) {
      reasons.add("words such as " + words.get(0));
      return BY_KNOWN;
    }
    return isBeforeMode(column)
        ? formed(reasons, "it stands before gross or net")
        : words.stream().anyMatch(GuessWords::isDoubtful)
            ? formed(reasons, "a mark in some rows")
            : 0;
  }

  /**
   * Whether words for gross and net stand behind it, as behind one for a steady weight. Numbers of
   * two digits are rather codes.
   */
  private boolean isBeforeMode(Column column) {
    return !column.values().stream().allMatch(word -> word.matches("\\d{2,}"))
        && table.columns().stream()
            .filter(next -> next.number() == column.number() + 1 && !next.values().isEmpty())
            .anyMatch(next -> GuessWords.areOfMode(next.values()));
  }

  /**
   * Whether a column has few words, most rows have the same one, and no other column tells which: a
   * scale says so of what did not come to rest or was taken back.
   */
  boolean isMark(Column column) {
    var words = new TreeMap<String, Long>();
    column.cells().forEach(word -> words.merge(word, 1L, Long::sum));
    long most = words.values().stream().mapToLong(rows -> rows).max().orElse(0);
    var others =
        IntStream.range(0, column.cells().size())
            .filter(row -> words.get(column.cells().get(row)) < most)
            .boxed()
            .toList();
    return words.size() > 1
        && !GuessWords.areOfMode(column.values())
        && !GuessWords.areOfSides(column.values())
        && words.size() <= MOST_STATUSES
        && most * 3 >= column.cells().size() * 2L
        && column.values().stream()
            .map(ProposedStatus::word)
            .allMatch(word -> MARK.matcher(word).matches())
        && GuessWords.columns().stream().allMatch(f -> GuessWords.score(f, column.title()) == 0)
        && !GuessWords.isOther(column.title())
        && table.columns().stream()
            .noneMatch(
                other ->
                    follows(column, other)
                        && distinct(others.stream().map(other.cells()::get).toList())
                            < others.size());
  }

  /** Whether every cell is a weight with its unit. */
  private static boolean isWeighed(Column column) {
    return !column.values().isEmpty()
        && column.values().stream()
            .allMatch(v -> v.matches("(?i)[+-]?\\d[\\d.,]*\\h*(kg|g|lb|oz)s?" + WeightText.KIND));
  }

  /** Whether a column holds weights with a letter before them, or says which are gross. */
  static boolean isBesideWeight(Column column) {
    return GuessWords.areOfMode(column.values())
        || column.values().stream().allMatch(value -> value.matches("\\D*\\d+[.,]\\d+"));
  }

  /** Whether each value of a column goes with one of another column, as a name with its number. */
  static boolean goWithEachOther(Column one, Column other) {
    return follows(one, other) && follows(other, one);
  }

  /** Whether a column holds names, such as those of cuts, or letters that stand in every row. */
  boolean isName(Column column) {
    if (isWeighed(column) || isBesideWeight(column)) {
      return false;
    }
    boolean letters = !column.cells().contains("") && !isMark(column);
    String name = letters ? ".*\\p{L}.*" : ".*\\p{L}{2}.*";
    return column.values().stream().distinct().count() > 1
        && column.values().stream().allMatch(value -> value.matches(name));
  }

  /** Whether a column without a name has several values, and most of them in several rows. */
  boolean comesAgain(Column column) {
    long different = distinct(column.cells());
    return column.header().isEmpty()
        && !column.cells().contains("")
        && !isWeighed(column)
        && !isBesideWeight(column)
        && different >= GuessNumbers.SOME
        && different * 2 <= column.cells().size();
  }

  /**
   * Whether numbers, with or without letters or a # before them, go up, but for a few times at
   * which they begin again, as on another day, or stand again, as in another file. One in a few may
   * stand twice, such as that of a reprint.
   */
  static boolean isCounting(List<String> values) {
    if (values.size() < 2 || !values.stream().allMatch(v -> v.matches("[\\p{L}#]{0,3}\\d{1,9}"))) {
      return false;
    }
    var all = values.stream().map(v -> Integer.valueOf(v.replaceAll("\\D", ""))).toList();
    var numbers =
        IntStream.range(0, all.size())
            .filter(i -> i == 0 || !all.get(i).equals(all.get(i - 1)))
            .mapToObj(all::get)
            .toList();
    var back =
        IntStream.range(1, numbers.size())
            .filter(i -> numbers.get(i) < numbers.get(i - 1))
            .boxed()
            .toList();
    int odd = back.size() + all.size() - numbers.size();
    return numbers.size() > 1
        && odd * GuessNumbers.SOME < all.size()
        && back.stream()
            .allMatch(
                i ->
                    numbers.get(i) <= numbers.get(0)
                        || numbers.subList(0, i).contains(numbers.get(i)));
  }
}
