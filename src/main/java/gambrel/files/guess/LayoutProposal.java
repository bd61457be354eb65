package gambrel.files.guess;

import gambrel.files.csv.TextForm;
import gambrel.files.guess.GuessTable.Column;
import gambrel.files.guess.GuessTable.Row;
import gambrel.files.layout.Layout;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Shop;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Writes a layout for the exports of a folder, and keeps the reasons and what is open. */
final class LayoutProposal {
  private static final Map<String, String> DELIMITER_WORDS =
      Map.of("\t", "tab", " ", "space", Character.toString(TextForm.BLANKS), "blanks");
  private static final int USUAL_GRAMS = 100;

  /** Hours and minutes, and maybe more, with a mark that no weight has. */
  private static final Pattern CLOCK = Pattern.compile("\\d{1,2}\\s*[:hH]\\s*\\d{2}(\\D.*)?");

  private final ExportSample sample;
  private final Shop shop;
  private final LocalDate today;
  private final String name;
  private final GuessTable table;
  private final GuessTimes times;
  private final GuessNumbers numbers;
  private final GuessFields guesses;
  private final Map<String, GuessFields.Choice> fields;
  private final Map<String, String> patterns = new HashMap<>();
  private final List<String> layout = new ArrayList<>();
  private final List<String> found = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();

  /** Fields that stay out of the layout until a question is answered. */
  private final Set<String> withheld = new HashSet<>();

  /**
   * What only a person can answer.
   *
   * @param asks the question
   * @param options the lines that each answer adds to the layout
   * @param row the index of a row that it is about
   */
  record Question(String asks, List<List<String>> options, int row) {}

  /**
   * A proposal.
   *
   * @param name the first folder of the exports
   * @param today the day of the run
   */
  LayoutProposal(ExportSample sample, Shop shop, LocalDate today, String name) {
    this.sample = sample;
    this.shop = shop;
    this.today = today;
    this.name = name;
    this.table = GuessTable.of(sample.files());
    this.times = new GuessTimes(shop.settings().locale());
    this.numbers = new GuessNumbers(table);
    this.guesses = new GuessFields(table, times, numbers, shop);
    this.fields = new HashMap<>(guesses.best());
    if (shop.scales().containsKey(name) && isOneUnknownScale()) {
      fields.remove("scale");
    }
    leaveOwnersOut();
    takeNamesForCodes();
    takeDigitsForClock();
    if (!table.columns().isEmpty()) {
      write();
    }
  }

  /**
   * Leaves out owners and lots that stand in every row. A pack with a customer is the customer's
   * outright, and one with a batch comes out of the batch; neither is meant of all rows of a body.
   */
  private void leaveOwnersOut() {
    if (has("customer") && !cells("customer").contains("")) {
      found.add(
          fields.remove("customer").column().name()
              + " stands in every row and is not read: bodies.csv says whose the bodies are.");
    }
    boolean unknown = cells("batch").stream().noneMatch(shop.batches()::containsKey);
    if (has("batch") && has("body") && unknown && !cells("batch").contains("")) {
      found.add(
          fields.remove("batch").column().name()
              + " stands in every row and is not read, as batches.csv has none of it.");
    }
  }

  /** Takes the one column of words for the code, such as names of cuts, if there is no other. */
  private void takeNamesForCodes() {
    var named =
        table.columns().stream()
            .filter(column -> fields.values().stream().noneMatch(c -> c.column().equals(column)))
            .filter(column -> column.values().stream().allMatch(v -> v.matches(".*\\p{L}{2}.*")))
            .filter(column -> column.values().stream().distinct().count() > 1)
            .toList();
    if (!has("code") && !has(Layout.BARCODE) && named.size() == 1) {
      var choice = new GuessFields.Choice("code", named.get(0), 0, "the one column of words left");
      fields.put("code", choice);
    }
  }

  /** Takes the one column of hours and minutes in bare digits that only rises within a day. */
  private void takeDigitsForClock() {
    var rising =
        table.columns().stream()
            .filter(column -> fields.values().stream().noneMatch(c -> c.column().equals(column)))
            .filter(column -> column.values().stream().allMatch(v -> v.matches("\\d{4}|\\d{6}")))
            .filter(column -> !times.patterns("clock", column.values()).isEmpty())
            .filter(this::risesWithinDays)
            .toList();
    if (has("date") && !has("clock") && rising.size() == 1) {
      var choice = new GuessFields.Choice("clock", rising.get(0), 0, "it rises within each day");
      fields.put("clock", choice);
    }
  }

  private boolean risesWithinDays(Column column) {
    var dates = cells("date");
    var clocks = column.cells();
    return dates.size() == clocks.size()
        && column.values().stream().distinct().count() * 2 > clocks.size()
        && IntStream.range(1, clocks.size())
            .filter(i -> dates.get(i).equals(dates.get(i - 1)))
            .allMatch(i -> clocks.get(i).compareTo(clocks.get(i - 1)) >= 0);
  }

  /** Whether all rows name one scale, which the shop does not have. */
  private boolean isOneUnknownScale() {
    var named = cells("scale").stream().distinct().toList();
    return named.size() == 1 && !shop.scales().containsKey(named.get(0));
  }

  /** The lines to save; empty if the text has no columns. */
  List<String> layout() {
    return layout;
  }

  /** What was found about the file as a whole, sentence by sentence. */
  List<String> found() {
    return found;
  }

  /** What is open. */
  List<Question> questions() {
    return questions;
  }

  /** Why a column was taken for a field; empty if it was not. */
  Optional<String> why(String field) {
    return Optional.ofNullable(fields.get(field)).map(GuessFields.Choice::reasons);
  }

  private void write() {
    layout.add("# How the exports in exports/" + name + " are read.");
    settle();
    addForm();
    addNumbers();
    askWhichColumns();
    addWeights();
    fields.keySet().stream().sorted(this::inOrder).forEach(this::addField);
    addUnread();
    addStatus();
    addUnits();
    addScale();
    addMissing();
    addIdentity();
    for (var question : questions) {
      layout.add("# " + question.asks() + " Take away the # before one of these:");
      for (int i = 0; i < question.options().size(); i++) {
        if (i > 0 && question.options().get(0).size() > 1) {
          layout.add("# or");
        }
        question.options().get(i).forEach(line -> layout.add('#' + line));
      }
    }
    layout.replaceAll(LayoutProposal::onOneLine);
    found.replaceAll(LayoutProposal::onOneLine);
  }

  private int inOrder(String one, String other) {
    var order = GuessWords.columns();
    return Integer.compare(order.indexOf(one), order.indexOf(other));
  }

  private static String onOneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ");
  }

  private void setting(String reason, String line) {
    found.add(reason);
    layout.add("# " + reason);
    layout.add(line);
  }

  private void ask(String asks, List<List<String>> options) {
    ask(asks, options, 0);
  }

  private void ask(String asks, List<List<String>> options, int row) {
    questions.add(new Question(onOneLine(asks), options, row));
  }

  /** The row that a question is about, as it stands; empty if there are no rows. */
  Optional<Row> row(Question question) {
    return table.rows().stream().skip(question.row()).findFirst();
  }

  private boolean has(String field) {
    return fields.containsKey(field);
  }

  private List<String> cells(String field) {
    return has(field) ? fields.get(field).column().cells() : List.of();
  }

  // The form of the file.

  private void addForm() {
    String mark = Character.toString(table.delimiter());
    String word = DELIMITER_WORDS.getOrDefault(mark, mark);
    found.add("Cells stand between " + (word.equals(mark) ? '"' + mark + '"' : word) + ".");
    layout.add("delimiter=" + word);
    if (table.quote() != TextForm.DOUBLE_QUOTE) {
      setting("Cells stand within apostrophes.", "quote=" + table.quote());
    }
    String charset = sample.charset().name();
    if (!charset.equals("UTF-8")) {
      setting("Its characters are not UTF-8 but " + charset + ".", "charset=" + charset);
    }
    if (table.skip() > 0) {
      setting("The table begins on line " + (table.skip() + 1) + ".", "skip=" + table.skip());
    }
    if (!table.header()) {
      setting("Its first row holds figures: it has no header.", "header=no");
    } else if (table.repeated()) {
      setting("Its header stands again between rows.", "header=repeated");
    }
    if (!table.ignore().isEmpty()) {
      String first = table.ignored().get(0);
      int others = table.ignored().size() - 1;
      String more = others == 0 ? "" : " and " + others + " more";
      setting(
          "Lines like " + '"' + shortened(first) + '"' + more + " are no rows and are passed over.",
          "ignore=^\\s*(" + table.ignore() + ")");
    }
    if (!table.unlike().isEmpty()) {
      found.add(
          "These files begin with another line, and need a folder of their own: "
              + String.join(", ", table.unlike())
              + ".");
    }
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  private void addNumbers() {
    boolean comma = numbers.hasDecimalComma();
    if (comma) {
      setting("The decimal mark is a comma.", "decimal=,");
    }
    numbers
        .thousands()
        .filter(mark -> mark != (comma ? ',' : '.'))
        .map(mark -> mark == ' ' ? "space" : mark == '\'' ? "apostrophe" : "" + mark)
        .ifPresent(
            mark -> setting("Thousands are set off by " + '"' + mark + "\".", "thousands=" + mark));
  }

  // Columns between which only a person can choose.

  /** Keeps a field out for which several columns fit, and a date whose clock cannot be read. */
  private void askWhichColumns() {
    for (String field : List.of("time", "date", "clock", "body", "code", "net")) {
      var rivals = has(field) ? guesses.rivals(fields.get(field), fields) : List.<Column>of();
      if (!rivals.isEmpty() && !(field.equals("net") && isInOunces())) {
        withhold(field);
        boolean one = rivals.stream().allMatch(column -> line(field, column).equals(line(field)));
        if (one) {
          layout.addAll(line(field));
        }
        ask(
            "Several columns could be the %s of a weighing. Which is it?".formatted(field),
            rivals.stream().map(column -> option(field, column, one)).toList());
      }
    }
    if (has("date") && !has("clock")) {
      unreadClock().ifPresent(this::askClock);
    }
  }

  private List<String> option(String field, Column column, boolean settled) {
    var lines = new ArrayList<>(reference(field, column));
    if (!settled) {
      lines.addAll(line(field, column));
    }
    return lines;
  }

  /** The line with which the column chosen for a field is read, if it needs one. */
  private List<String> line(String field) {
    return line(field, fields.get(field).column());
  }

  /** The line with which a column could be read as a field, if it needs one: pattern or unit. */
  private List<String> line(String field, Column column) {
    if (field.equals("net")) {
      String unit = GuessNumbers.unit(column);
      return unit.isEmpty() ? List.of() : List.of("unit=" + unit);
    }
    if (!Set.of("time", "date", "clock").contains(field)) {
      return List.of();
    }
    String settled = patterns.getOrDefault(field, "");
    var candidates = times.patterns(field, column.values());
    boolean same =
        !settled.isEmpty() && !settled.equals("epoch") && fits(settled, column)
            || candidates.contains(settled);
    String pattern = same ? settled : candidates.stream().findFirst().orElse("");
    return pattern.isEmpty() ? List.of() : List.of(field + '=' + pattern);
  }

  private boolean fits(String pattern, Column column) {
    return times.readings(pattern, column.values()).isPresent();
  }

  /** A column that no field has and that looks like clock times. */
  private Optional<Column> unreadClock() {
    return table.columns().stream()
        .filter(column -> fields.values().stream().noneMatch(c -> c.column().equals(column)))
        .filter(column -> !column.values().isEmpty())
        .filter(
            column ->
                column.values().stream().filter(v -> CLOCK.matcher(v).matches()).count() * 2
                    > column.values().size())
        .findFirst();
  }

  private void askClock(Column column) {
    if (!withheld.contains("date")) {
      withhold("date");
      layout.addAll(line("date"));
    }
    var lines = new ArrayList<>(reference("date", fields.get("date").column()));
    lines.addAll(reference("clock", column));
    lines.add("clock=HH:mm:ss");
    ask(column.name() + " looks like a clock. How is it to be read?", List.of(lines));
  }

  // Weights.

  private void addWeights() {
    String field = has("net") ? "net" : "gross";
    if (!has(field) || withheld.contains(field) && line(field).isEmpty()) {
      return;
    }
    if (addOunces()) {
      return;
    }
    var column = fields.get(field).column();
    String unit = GuessNumbers.unit(column);
    boolean inCells = column.values().stream().allMatch(v -> v.matches("(?i).*(kg|g|lb|oz)s?\\.?"));
    if (withheld.contains(field)) {
      return;
    }
    if (!unit.isEmpty()) {
      setting("Its weights are in " + unit + ".", "unit=" + unit);
    } else if (!has("unit") && !inCells) {
      askUnit(field, column);
    }
    if (isGrossOrNet(field, column)) {
      withhold(field);
      ask(
          column.name() + " stands beside a tare: is it the weight without the tare or with it?",
          List.of(reference("net", column), reference("gross", column)));
    }
    addNegative(field);
  }

  /** Adds the columns of pounds and of ounces, if the weights stand in two; returns whether. */
  private boolean addOunces() {
    var pounds = weights("lb");
    var ounces = weights("oz");
    if (!isInOunces()) {
      return false;
    }
    for (String field : List.of("net", "gross")) {
      withheld.add(field);
    }
    setting("Pounds and ounces stand in two columns.", reference("net", pounds.get()).get(0));
    layout.add(reference(Layout.OUNCES, ounces.get()).get(0));
    return true;
  }

  /** Whether one column has pounds and another ounces. */
  private boolean isInOunces() {
    return weights("lb").isPresent() && weights("oz").isPresent();
  }

  /** The first column of numbers in a unit. */
  private Optional<Column> weights(String unit) {
    return table.columns().stream()
        .filter(c -> GuessNumbers.unit(c).equals(unit) && GuessNumbers.isNumeric(c))
        .findFirst();
  }

  /** Keeps a column out, even under the field's own name, until a question is answered. */
  private void withhold(String field) {
    withheld.add(field);
    layout.add("# Not read until what is asked at the end is answered:");
    layout.add("column." + field + '=');
  }

  /** Whether a weight that is not called net or gross stands beside a tare above zero. */
  private boolean isGrossOrNet(String field, Column column) {
    return field.equals("net")
        && has("tare")
        && !has("gross")
        && !column.header().toLowerCase(Locale.ROOT).matches(".*net.*")
        && numbers
            .numbers(fields.get("tare").column())
            .filter(tares -> tares.stream().anyMatch(tare -> tare.signum() != 0))
            .isPresent();
  }

  /** Whole numbers without a unit may be grams. */
  private void askUnit(String field, Column column) {
    var values = numbers.numbers(column).orElse(List.of());
    if (!mayBeGrams(values)) {
      return;
    }
    var most = values.stream().max(BigDecimal::compareTo).orElse(BigDecimal.ZERO);
    var scale = scale();
    var own = scale.map(Scale::unit).orElse(shop.settings().unit());
    var capacity = scale.flatMap(Scale::capacity);
    if (own != WeightUnit.KG && own != WeightUnit.LB) {
      return;
    }
    if (capacity.isPresent() && most.compareTo(capacity.get().multiply(BigDecimal.TEN)) > 0) {
      setting(
          "Its whole numbers are grams: the scale weighs at most %s %s."
              .formatted(capacity.get().toPlainString(), own.id()),
          "unit=g");
      return;
    }
    boolean coarse =
        scale.filter(s -> s.division().compareTo(new BigDecimal("0.5")) >= 0).isPresent();
    if (coarse && capacity.filter(c -> most.compareTo(c) <= 0).isPresent()) {
      return;
    }
    withhold(field);
    ask(
        "Are the whole numbers of " + column.name() + " grams, or " + own.id() + "?",
        List.of(
            List.of("unit=g", reference(field, column).get(0)),
            List.of("unit=" + own.id(), reference(field, column).get(0))));
  }

  /** Whether all weights are whole numbers, and some so large that they may be grams. */
  static boolean mayBeGrams(List<BigDecimal> weights) {
    return weights.stream().allMatch(weight -> weight.scale() <= 0)
        && weights.stream().anyMatch(weight -> weight.intValue() >= USUAL_GRAMS);
  }

  private Optional<Scale> scale() {
    return Optional.ofNullable(shop.scales().get(name))
        .or(
            () ->
                shop.scales().values().stream().filter(s -> shop.scales().size() == 1).findFirst());
  }

  private void addNegative(String field) {
    var column = fields.get(field).column();
    var all = numbers.numbers(column).orElse(List.of());
    if (all.size() != column.cells().size() || all.stream().noneMatch(n -> n.signum() < 0)) {
      return;
    }
    var positive = new HashSet<BigDecimal>();
    boolean pairs = true;
    for (var number : all) {
      var plain = number.stripTrailingZeros();
      pairs &= number.signum() >= 0 || positive.contains(plain.negate());
      positive.add(plain);
    }
    if (pairs) {
      setting(
          "A weight below zero cancels the row before it with that weight, of the same body and"
              + " code.",
          "negative=void");
    }
  }

  // Columns.

  private static List<String> reference(String field, Column column) {
    return List.of("column." + field + '=' + column.reference().replace("\\", "\\\\"));
  }

  private void addField(String field) {
    if (withheld.contains(field)) {
      return;
    }
    var column = fields.get(field).column();
    layout.add(reference(field, column).get(0));
    if (patterns.containsKey(field) && !patterns.get(field).isEmpty()) {
      layout.add(field + '=' + patterns.get(field));
    }
    if (field.equals("body")) {
      column.values().stream()
          .distinct()
          .filter(value -> value.matches("0+|-+") && !shop.bodies().containsKey(value))
          .forEach(
              value -> setting("Body " + value + " stands for none.", "value.body." + value + '='));
    }
    if (field.equals(Layout.BARCODE)
        && column.values().stream().allMatch(value -> value.matches("\\d+"))) {
      ask(
          "How are the in-store numbers of "
              + column.name()
              + " laid out? I item, W weight, C check digit, X any other.",
          List.of(List.of("instore=" + inStore(column.values().get(0)), "instore.decimals=3")));
    }
  }

  /** The usual plan of in-store numbers: a prefix, five digits of item, five of weight, a check. */
  private static String inStore(String number) {
    int plan = "IIIIIWWWWWC".length();
    return number.substring(0, Math.max(0, number.length() - plan)) + "IIIIIWWWWWC";
  }

  /** Keeps out columns that have the name of a field and hold something else. */
  private void addUnread() {
    var taken = fields.values().stream().map(GuessFields.Choice::column).toList();
    for (var column : table.columns()) {
      String name = column.header().strip().toLowerCase(Locale.ROOT);
      boolean inTwo = name.equals("time") && (has("date") || has("clock"));
      boolean given = fields.containsKey(name) || withheld.contains(name) || inTwo;
      if (!given && !taken.contains(column) && Field.of(name).isPresent()) {
        layout.add("column." + name + '=');
      }
    }
  }

  /** Finds the pattern of each column of times; asks where two readings are possible. */
  private void settle() {
    for (String field : List.of("time", "date", "clock")) {
      if (!has(field)) {
        continue;
      }
      var column = fields.get(field).column();
      var candidates = times.patterns(field, column.values());
      var filled =
          IntStream.range(0, column.cells().size())
              .filter(i -> !column.cells().get(i).isEmpty())
              .boxed()
              .toList();
      var rows = filled.stream().map(table.rows()::get).toList();
      var cells = cells("body");
      var bodies = filled.stream().map(i -> cells.isEmpty() ? "" : cells.get(i)).toList();
      var evidence = new DateEvidence(shop, today, rows, bodies);
      var readings =
          candidates.stream()
              .filter(pattern -> !pattern.isEmpty() && !pattern.equals("epoch"))
              .map(pattern -> new DateEvidence.Reading(pattern, moments(pattern, column)))
              .toList();
      var settled =
          readings.isEmpty() ? new DateEvidence.Settled(candidates, "") : evidence.settle(readings);
      boolean dated = !field.equals("clock") && readings.size() == 1;
      if (dated && evidence.contradicts(readings.get(0))) {
        found.add("Its dates do not fit the kill dates or lie ahead: was the scale's clock right?");
      }
      if (settled.patterns().size() == 1) {
        patterns.put(field, settled.patterns().get(0));
        if (!settled.why().isEmpty()) {
          found.add(
              "Its "
                  + field
                  + " is read as "
                  + settled.patterns().get(0)
                  + ": "
                  + settled.why()
                  + '.');
        }
      } else {
        ask(
            field.equals("clock")
                ? "How is " + column.name() + " to be read?"
                : "Which is the day and which the month in " + column.name() + '?',
            settled.patterns().stream().map(p -> List.of(field + '=' + p)).toList());
      }
    }
  }

  private List<LocalDateTime> moments(String pattern, Column column) {
    return times.readings(pattern, column.values()).orElseThrow();
  }

  // Words.

  private void addStatus() {
    if (!has("status")) {
      return;
    }
    var column = fields.get("status").column();
    var counts = new TreeMap<String, Integer>();
    column.values().forEach(word -> counts.merge(word, 1, Integer::sum));
    for (var count : counts.entrySet()) {
      String word = count.getKey();
      String key = "value.status." + escaped(word) + '=';
      boolean most = count.getValue() * 2 > column.cells().size();
      var meaning = StatusWords.meaning(word, column.header());
      boolean isVoid = meaning.equals(Optional.of("void"));
      var cancels = isVoid ? cancelsOther(word) : Optional.<Integer>empty();
      if (word.equalsIgnoreCase("ok") || word.toLowerCase(Locale.ROOT).matches("void(:.+)?")) {
        cancels.ifPresent(row -> found.add(ofItsOwn(word, row)));
        continue;
      }
      if (cancels.isPresent()) {
        ask(
            ofItsOwn(word, cancels.get()) + " Until then such a row is set aside.",
            List.of(List.of(key + "void"), List.of(key + "ok")),
            cancels.get());
      } else if (meaning.isPresent() || most) {
        String why = meaning.isPresent() ? "common practice" : "it stands in most rows";
        setting(
            "Status \"%s\" is taken for %s: %s.".formatted(word, meaning.orElse("ok"), why),
            key + meaning.orElse("ok"));
      } else {
        ask(
            "What does the status \"%s\" mean (%d of %d rows)? Until then such a row is set aside."
                .formatted(word, count.getValue(), column.cells().size()),
            List.of(List.of(key + "ok"), List.of(key + "void")),
            column.cells().indexOf(word));
      }
    }
  }

  private String ofItsOwn(String word, int row) {
    return ("Status \"%s\" stands on ticket %s, which has a number of its own. Void cancels that"
            + " ticket itself; if another ticket is meant, void that one in corrections.csv, too.")
        .formatted(word, cells("ticket").get(row));
  }

  /**
   * The first row with a status whose ticket no other row has, though it seems to mean another row:
   * one above it with the same body, code and weight, or one whose ticket stands in a cell that
   * only such rows fill.
   */
  private Optional<Integer> cancelsOther(String word) {
    var tickets = cells("ticket");
    return IntStream.range(0, tickets.size())
        .filter(i -> cells("status").get(i).equals(word))
        .filter(i -> tickets.indexOf(tickets.get(i)) == tickets.lastIndexOf(tickets.get(i)))
        .filter(i -> IntStream.range(0, i).anyMatch(above -> isSame(i, above)) || refers(i, word))
        .boxed()
        .findFirst();
  }

  private boolean isSame(int row, int other) {
    return !cells("status").get(row).equals(cells("status").get(other))
        && List.of("body", "code", "net", "gross").stream()
            .map(this::cells)
            .allMatch(
                cells ->
                    cells.isEmpty()
                        || cells.get(row).equals(cells.get(other))
                        || cells.get(row).equals('-' + cells.get(other)));
  }

  private boolean refers(int row, String word) {
    return table.columns().stream()
        .filter(column -> fields.values().stream().noneMatch(c -> c.column().equals(column)))
        .filter(column -> cells("ticket").contains(column.cells().get(row)))
        .anyMatch(
            column ->
                IntStream.range(0, column.cells().size())
                    .filter(i -> !cells("status").get(i).equals(word))
                    .allMatch(i -> column.cells().get(i).isEmpty()));
  }

  private static String escaped(String foreign) {
    return foreign
        .replace("\\", "\\\\")
        .replace("=", "\\=")
        .replace("#", "\\#")
        .replace("!", "\\!");
  }

  private void addUnits() {
    cells("unit").stream()
        .distinct()
        .filter(word -> !word.isEmpty() && WeightUnit.of(word).isEmpty())
        .forEach(word -> layout.add("value.unit." + escaped(word) + '=' + unit(word)));
  }

  private static String unit(String word) {
    return switch (word.toLowerCase(Locale.ROOT).charAt(0)) {
      case 'k' -> "kg";
      case 'g' -> "g";
      case 'o' -> "oz";
      default -> "lb";
    };
  }

  // What no column gives.

  private void addScale() {
    var scales = shop.scales().keySet().stream().sorted().toList();
    if (has("scale") || scales.contains(name)) {
      return;
    }
    if (scales.size() == 1) {
      setting("The shop has one scale.", "constant.scale=" + scales.get(0));
    } else {
      ask(
          "No column names the scale. Name the folder after it, or say which it is.",
          scales.isEmpty()
              ? List.of(List.of("constant.scale="))
              : scales.stream().map(id -> List.of("constant.scale=" + id)).toList());
    }
  }

  private void addMissing() {
    boolean barcode = has(Layout.BARCODE);
    boolean named = sample.files().stream().allMatch(f -> Layout.dateIn(f.path()).isPresent());
    if (!has("time") && !has("date") && !barcode && has("clock") && named) {
      setting("The date stands in the names of the files.", "constant.date=name");
    } else if (!has("time") && !has("date") && !barcode) {
      ask(
          "No column is a date. Which is it?",
          List.of(List.of("column.time=", "time=dd/MM/yyyy HH:mm")));
    }
    if (!has("code") && !barcode) {
      ask(
          "No column has a code. Which is it, or which code of codes.csv do all rows have?",
          List.of(List.of("column.code="), List.of("constant.code=")));
    }
    if (!has("net") && !has("gross") && !barcode) {
      ask("No column is a weight. Which is it?", List.of(List.of("column.net=")));
    }
    if (!has("body") && !barcode) {
      found.add("No column names the body: say in bench.csv from when to when which was cut.");
    }
  }

  private void addIdentity() {
    if (!has("ticket")) {
      setting(
          "The scale counts no tickets: a row is known by these fields. Equal rows of one file all"
              + " count; rows that two files have count once.",
          "identity=time,body,code,net");
    } else if (startsAgain()) {
      setting(
          "The numbers of "
              + fields.get("ticket").column().name()
              + " come again within a day: a row is known by these fields together.",
          "identity=ticket,time,body,code,net");
    }
  }

  /** Whether two tickets or more stand twice on one day with different content. */
  private boolean startsAgain() {
    var tickets = cells("ticket");
    var day = has("date") ? cells("date") : cells("time");
    var status = cells("status");
    var first = new LinkedHashMap<String, List<String>>();
    var again = new HashSet<String>();
    for (int i = 0; i < tickets.size(); i++) {
      var cells = table.rows().get(i).csv().cells();
      String scale = has("scale") ? cells("scale").get(i) : "";
      String of = day.isEmpty() ? "" : day.get(i);
      String key = scale + '\n' + tickets.get(i) + '\n' + (has("date") ? of : date(i, of));
      boolean blank = status.isEmpty() || status.get(i).isEmpty();
      if (blank && first.putIfAbsent(key, cells) != null && !first.get(key).equals(cells)) {
        again.add(key);
      }
    }
    return again.size() > 1;
  }

  private String date(int row, String time) {
    var pattern = patterns.get("time");
    return pattern == null || pattern.isEmpty() || pattern.equals("epoch")
        ? time.substring(0, Math.min(time.length(), 10))
        : times
            .readings(pattern, List.of(time))
            .map(read -> read.get(0).toLocalDate().toString())
            .orElse("" + row);
  }
}
