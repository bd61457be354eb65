package gambrel.files.guess;

import gambrel.files.csv.TextForm;
import gambrel.files.guess.GuessTable.Column;
import gambrel.files.layout.Layout;
import gambrel.files.layout.LayoutTypes;
import gambrel.files.layout.Layouts;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Writes a layout for the exports of a folder, and keeps the reasons and what is open. */
final class LayoutProposal {
  /** A column with more values names something else than scales. */
  private static final int MOST_SCALES = 4;

  /** What may stand in an id at the scale and not in the shop's files. */
  private static final List<String> WITHIN_IDS = List.of("-", "/", ".", "_", " ", "'");

  /** The line by which a row without a ticket is known. */
  static final String IDENTITY = "identity=time,body,code,net";

  /** What to do where nothing gives the date. */
  static final String NO_DATE =
      "No column is a whole date. Let the scale print it; or give each day a file with the date in"
          + " its name, such as 2026-07-28.csv";

  static final String DATE_IN_NAME = "constant.date=name";

  private final ExportSample sample;
  private final Shop shop;
  private final String name;

  private final boolean isNewScale;

  /** Whether a layout is saved that can be used. */
  private final boolean saved;

  /** What a saved layout passes over. */
  private final Optional<Pattern> ignore;

  /** Whether the saved layout goes on with what is proposed. */
  private final boolean goesOn;

  /** The fields of which it names a column. */
  private final Set<String> savedFields;

  private final GuessTable table;
  private final GuessNumbers numbers;
  private final GuessFields guesses;
  private final LayoutDraft draft;
  private final ProposedTimes times;
  private final ProposedClock clock;
  private final ProposedWeights weights;

  /**
   * The layout that is proposed for exports; or a saved one, with the questions about it. One that
   * reads no row goes on with the lines that are missing in it.
   *
   * @param name the first folder of the exports
   * @param today the day of the run
   * @param choice what is saved
   * @param read what is read so
   * @param isNewScale whether the folder is of a scale that the shop's files do not have yet
   */
  static LayoutDraft of(
      ExportSample sample,
      Shop shop,
      LocalDate today,
      String name,
      Layouts.Choice choice,
      AsRead read,
      boolean isNewScale) {
    var proposal = new LayoutProposal(sample, shop, today, name, choice.saved(), read, isNewScale);
    if (!proposal.table.columns().isEmpty()) {
      proposal.write();
    }
    if (proposal.saved) {
      var missing = proposal.goesOn ? proposal.missing(choice) : List.<String>of();
      proposal.draft.lines().clear();
      proposal.draft.lines().addAll(choice.lines());
      proposal.draft.lines().addAll(missing);
    }
    return proposal.draft;
  }

  /**
   * Whether a saved layout reads no row yet. Where files cannot be read, it names no column for a
   * field that a row needs.
   */
  private boolean isUnfinished(Layout saved, AsRead read) {
    var columns = saved.positions(table.top()).keySet();
    boolean lacks = !saved.named().values().containsAll(saved.lacking(columns));
    return read.isWrong() && (read.fault().isEmpty() || lacks);
  }

  /** The proposed lines with keys that a saved layout does not have, each below its reason. */
  private List<String> missing(Layouts.Choice choice) {
    var columns = choice.layout().positions(table.top()).keySet();
    var missing = new ArrayList<String>();
    var reasons = new ArrayList<String>();
    for (String line : draft.lines()) {
      reasons.add(line);
      if (!line.startsWith("#")) {
        String key = LayoutDraft.key(line);
        boolean isRead = columns.stream().anyMatch(column -> key.equals("column." + column));
        if (!choice.settings().containsKey(key) && !isRead) {
          missing.addAll(reasons);
        }
        reasons.clear();
      }
    }
    return missing;
  }

  private LayoutProposal(
      ExportSample sample,
      Shop shop,
      LocalDate today,
      String name,
      Optional<Layout> layout,
      AsRead read,
      boolean isNewScale) {
    this.isNewScale = isNewScale;
    this.sample = sample;
    this.shop = shop;
    this.name = name;
    this.saved = layout.isPresent();
    this.ignore = layout.flatMap(of -> of.text().ignore());
    this.table = GuessTable.of(sample.files(), layout);
    this.goesOn = layout.filter(of -> isUnfinished(of, read)).isPresent();
    this.numbers = new GuessNumbers(table);
    var formats = new GuessTimes(shop.settings().locale());
    this.guesses = new GuessFields(table, formats, numbers, shop, scale());
    this.draft = new LayoutDraft(name, sample, table, guesses.best());
    this.times = new ProposedTimes(draft, formats, shop, today);
    var unit = scale().map(Scale::unit).orElse(shop.settings().unit());
    this.weights = new ProposedWeights(draft, numbers, scale(), unit);
    if (shop.scales().containsKey(name) && isOneUnknownScale()) {
      draft.fields().remove("scale");
    }
    leaveOwnersOut();
    leaveNumbersOut();
    var places = layout.map(of -> of.positions(table.top())).orElse(Map.of());
    takeSaved(places);
    this.savedFields = places.keySet();
    if (!draft.has(Layout.BARCODE) && !draft.has("code")) {
      takeCode();
    }
    if (!savedFields.contains("status")) {
      takeMarksForStatus();
    }
    this.clock = new ProposedClock(draft, times);
    if (!draft.has("gross")) {
      takeLeft("net", "the one column left in steps of the scale", this::isInSteps);
      takeLeft("tare", "less than the weight in each row, and mostly the same", this::isTare);
    }
  }

  /** The scale that the folder is named after, or the only one if this is no new one. */
  private Optional<Scale> scale() {
    var all = shop.scales().values();
    return Optional.ofNullable(shop.scales().get(name))
        .or(() -> all.stream().filter(only -> all.size() == 1 && !isNewScale).findFirst());
  }

  /** Takes each column as a saved layout reads it. */
  private void takeSaved(Map<String, Integer> read) {
    draft.fields().values().removeIf(choice -> read.containsValue(choice.column().number() - 1));
    read.forEach((field, at) -> draft.choose(field, table.columns().get(at), "so it is saved"));
  }

  /**
   * Leaves out owners and lots that stand in every row. A pack with a customer is the customer's
   * outright, and one with a batch comes out of the batch; neither is meant of all rows of a body.
   */
  private void leaveOwnersOut() {
    leaveOut("customer", "bodies.csv says whose the bodies are", true);
    boolean unknown = draft.cells("batch").stream().noneMatch(shop.batches()::containsKey);
    leaveOut("batch", "batches.csv has none of it", draft.has("body") && unknown);
  }

  /**
   * Leaves out in-store numbers where code and weight have columns, so as not to ask their plan.
   */
  private void leaveNumbersOut() {
    boolean isGiven = draft.has("code") && (draft.has("net") || draft.has("gross"));
    if (isGiven && draft.cells(Layout.BARCODE).stream().allMatch(cell -> cell.matches("\\d*"))) {
      draft.fields().remove(Layout.BARCODE);
    }
  }

  private void leaveOut(String field, String why, boolean notMeant) {
    if (draft.has(field) && notMeant && !draft.cells(field).contains("")) {
      draft.tell(
          draft.fields().remove(field).column().name()
              + " stands in every row and is not read: "
              + why
              + '.');
    }
  }

  /** Takes a column for a field that has none, if it is the only one left that fits. */
  private void takeLeft(String field, String reason, Predicate<Column> fits) {
    var left = draft.unused().stream().filter(fits).toList();
    if (!draft.has(field) && left.size() == 1) {
      draft.choose(field, left.get(0), reason);
    }
  }

  /**
   * Takes the one column left of words for hot and cold for the code; else that of other words,
   * unless these name no cuts and there are numbers beside them that come again; else the one
   * column without a name that comes again.
   */
  private void takeCode() {
    var left = draft.unused().stream().filter(column -> !isOfFiles(column)).toList();
    var words = left.stream().filter(guesses::isName).toList();
    var steps = words.stream().filter(column -> GuessWords.areOfRail(column.values())).toList();
    if (steps.size() == 1) {
      draft.choose("code", steps.get(0), "it says hot and cold");
    } else if (words.size() == 1) {
      var only = words.get(0);
      boolean isDoubtful =
          left.stream()
              .filter(other -> other.cells().stream().allMatch(cell -> cell.matches("\\d{1,6}")))
              .filter(other -> other.cells().stream().distinct().count() < other.cells().size())
              .anyMatch(other -> !GuessFields.goWithEachOther(only, other));
      if (!isDoubtful || new CodeMeanings(shop).areOfCuts(only)) {
        draft.choose("code", only, "the one column of words left");
      }
    } else {
      takeLeft(
          "code",
          "the one column left whose values come again",
          column -> left.contains(column) && guesses.comesAgain(column));
    }
  }

  /** Whether each of several files has a value of its own in a column. */
  private boolean isOfFiles(Column column) {
    var files = table.rows().stream().map(GuessTable.Row::file).toList();
    var both =
        IntStream.range(0, files.size())
            .mapToObj(row -> files.get(row) + '\n' + column.cells().get(row))
            .distinct()
            .count();
    long different = column.cells().stream().distinct().count();
    return both < files.size() && different > 1 && both == files.stream().distinct().count();
  }

  /** Whether a column without a name may be of weights in steps of the scale, maybe in grams. */
  private boolean isInSteps(Column column) {
    return column.header().isEmpty() && guesses.mayBeWeight(column) && weights.isInSteps(column);
  }

  /** Whether a column without a name may be of the tares of the weights that were found. */
  private boolean isTare(Column column) {
    var tares = numbers.numbers(column).orElse(List.of());
    var weights =
        draft.has("net")
            ? numbers.numbers(draft.column("net"))
            : Optional.<List<BigDecimal>>empty();
    return column.header().isEmpty()
        && weights.filter(of -> of.size() == tares.size() && areBelow(tares, of)).isPresent()
        && tares.stream().distinct().count() * GuessNumbers.SOME <= tares.size()
        && tares.stream()
            .anyMatch(t -> t.signum() > 0 && (t.scale() > 0 || t.compareTo(BigDecimal.TEN) >= 0));
  }

  private static boolean areBelow(List<BigDecimal> tares, List<BigDecimal> weights) {
    return IntStream.range(0, tares.size())
        .allMatch(i -> tares.get(i).signum() >= 0 && tares.get(i).compareTo(weights.get(i)) < 0);
  }

  /** Takes a column of marks for the status, whatever it is called. */
  private void takeMarksForStatus() {
    var tickets = draft.cells("ticket");
    draft.unused().stream()
        .filter(guesses::isMark)
        .filter(
            column ->
                column.values().stream()
                    .anyMatch(v -> ProposedStatus.ticket(v).filter(tickets::contains).isPresent()))
        .findFirst()
        .ifPresent(column -> draft.choose("status", column, "it names tickets of other rows"));
    if (!draft.has("status")) {
      draft.unused().stream()
          .filter(guesses::isMark)
          .findFirst()
          .ifPresent(
              column -> {
                draft.choose("status", column, "few words, and most rows have the same");
                draft.tell(
                    column.name()
                        + " may say which weighings count. If it says something else, take out"
                        + " what stands behind column.status= in the layout.");
              });
    }
  }

  /** Whether all rows name one scale, which the shop does not have. */
  private boolean isOneUnknownScale() {
    var named = draft.cells("scale").stream().distinct().toList();
    return named.size() == 1 && !shop.scales().containsKey(named.get(0));
  }

  private void write() {
    draft.add("# How the exports in exports/" + name + " are read.");
    times.settle();
    addForm();
    addNumbers();
    askWhichColumns();
    clock.ask();
    times.askDayAbove();
    times.askHalfDays();
    weights.propose();
    draft.fields().keySet().stream().sorted(this::inOrder).forEach(this::addField);
    addUnread();
    int before = draft.lines().size();
    var status = new ProposedStatus(draft, savedFields.contains("status"));
    status.propose();
    status.askWhatWordsCancel("body", body -> shop.bodies().containsKey(body));
    status.askWhatWordsCancel("code", code -> CodeIndex.of(shop).find(code).isPresent());
    askSavedForStatus(draft.lines().subList(before, draft.lines().size()));
    addUnits();
    addScale();
    askForBatches();
    addMissing();
    addIdentity();
    draft.finish();
  }

  private int inOrder(String one, String other) {
    var order = GuessWords.columns();
    return Integer.compare(order.indexOf(one), order.indexOf(other));
  }

  // The form of the file.

  private void addForm() {
    draft.add("delimiter=" + LayoutTypes.word(table.form().delimiter()));
    if (table.form().quote() != TextForm.DOUBLE_QUOTE) {
      draft.setting("Cells stand within apostrophes.", "quote=" + table.form().quote());
    }
    String charset = sample.charset().name();
    if (!charset.equals("UTF-8")) {
      draft.setting("Its characters are not UTF-8 but " + charset + ".", "charset=" + charset);
    }
    if (table.skip() > 0) {
      draft.setting("The table begins on line " + (table.skip() + 1) + ".", "skip=" + table.skip());
    }
    if (!table.header()) {
      draft.setting("Its first row holds figures: it has no header.", "header=no");
    } else if (table.repeated()) {
      draft.setting("Its header stands again between rows.", "header=repeated");
    }
    var plain = table.ignored().stream().filter(line -> !mayCancel(line)).toList();
    if (!plain.isEmpty()) {
      int others = plain.size() - 1;
      String more = others == 0 ? "" : " and " + others + " more";
      draft.setting(
          "Lines like "
              + '"'
              + shortened(plain.get(0).raw())
              + '"'
              + more
              + " are no rows and are passed over.",
          ignoring(plain));
    }
    var cancelling = table.ignored().stream().filter(LayoutProposal::mayCancel).toList();
    if (!cancelling.isEmpty()) {
      draft.ask(
          "\"%s\" is no weighing. If it takes one back, void the ticket of that one in corrections.csv."
                  .formatted(shortened(cancelling.get(0).raw()))
              + " In any case put this in place of the line that begins with ignore=, if there is one:",
          List.of(List.of(ignoring(table.ignored()))),
          table.rows().size());
    }
    if (!table.unlike().isEmpty()) {
      draft.tell(
          "These files begin with another line, and need a folder of their own: "
              + String.join(", ", table.unlike())
              + ".");
    }
  }

  /** The line that passes some lines over, and those that a saved layout passes over. */
  private String ignoring(List<GuessTable.Ignored> lines) {
    String known = ignore.map(pattern -> pattern.pattern() + '|').orElse("");
    return lines.stream()
        .map(GuessTable.Ignored::expression)
        .distinct()
        .sorted()
        .collect(Collectors.joining("|", "ignore=" + known + "^\\s*(", ")"));
  }

  /** Whether a line that is no row has a word for a cancelled weighing, and a number. */
  private static boolean mayCancel(GuessTable.Ignored line) {
    return GuessWords.mentionsVoid(line.raw()) && line.raw().matches(".*\\d.*");
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  private void addNumbers() {
    if (numbers.hasDecimalComma()) {
      draft.setting("The decimal mark is a comma.", "decimal=,");
    }
    numbers
        .thousands()
        .map(LayoutTypes::word)
        .ifPresent(
            mark ->
                draft.setting(
                    "Thousands are set off by " + '"' + mark + "\".", "thousands=" + mark));
  }

  // Columns.

  /** Keeps a field out for which several columns fit. */
  private void askWhichColumns() {
    var fields = new ArrayList<>(List.of("time", "date", "clock", "body", "code", "net"));
    fields.removeAll(savedFields);
    for (String field : fields) {
      var rivals =
          Optional.ofNullable(draft.fields().get(field)).stream()
              .flatMap(choice -> guesses.rivals(choice, draft.fields()).stream())
              .filter(column -> !clock.isOpen(column))
              .toList();
      if (rivals.size() > 1 && !(field.equals("net") && weights.isInOunces())) {
        draft.withhold(field);
        var own = line(field, draft.column(field));
        boolean one = rivals.stream().allMatch(column -> line(field, column).equals(own));
        if (one) {
          own.forEach(draft::add);
        }
        draft.ask(
            "Several columns could be the %s of a weighing. Which is it?".formatted(field),
            rivals.stream()
                .map(
                    column ->
                        Stream.concat(
                                Stream.of(column.line(field)),
                                one ? Stream.of() : line(field, column).stream())
                            .toList())
                .toList());
      }
    }
  }

  /** The line with which a column could be read as a field, if it needs one: pattern or unit. */
  private List<String> line(String field, Column column) {
    String unit = field.equals("net") ? GuessNumbers.unit(column) : "";
    return unit.isEmpty() ? times.line(field, column) : List.of("unit=" + unit);
  }

  private void addField(String field) {
    if (draft.isWithheld(field)) {
      return;
    }
    var column = draft.column(field);
    if (!column.above().isEmpty()) {
      draft.tell("The %s stands %s.".formatted(field, draft.fields().get(field).reasons()));
    }
    draft.add(column.line(field));
    times.line(field).ifPresent(draft::add);
    if (field.equals("body")) {
      var tags = shop.bodies().values().stream().flatMap(body -> body.tags().stream());
      addOmitted(field, column, Stream.concat(shop.bodies().keySet().stream(), tags).toList());
      addNoBody(column);
    }
    if (field.equals("ticket") && column.values().stream().allMatch(v -> v.startsWith("#"))) {
      draft.setting("In corrections a ticket is named without its #.", "omit.ticket=#");
    }
    if (field.equals("scale") && shop.scales().isEmpty()) {
      commonBeginning(column.values())
          .filter(label -> label.matches("\\p{L}+[:#]"))
          .ifPresent(
              label ->
                  draft.setting(
                      "The scale is named without \"%s\".".formatted(label),
                      "omit.scale=" + label));
    }
    if (field.equals("code")) {
      addOmitted(field, column, shop.codes().stream().map(ScaleCode::pattern).toList());
    }
    if (field.equals(Layout.BARCODE)
        && column.values().stream().allMatch(value -> value.matches("\\d+"))) {
      draft.ask(
          "How are the in-store numbers of "
              + column.name()
              + " laid out? I item, W weight, C check digit, X any other.",
          List.of(List.of("instore=" + inStore(column.values().get(0)), "instore.decimals=3")));
    }
  }

  /** Adds what stands in ids that the shop folder writes without it. */
  private void addOmitted(String field, Column column, Collection<String> ids) {
    var known = new CodeIndex(ids);
    Stream.concat(WITHIN_IDS.stream(), commonBeginning(column.values()).stream())
        .filter(mark -> ids.stream().noneMatch(id -> id.contains(mark)))
        .filter(mark -> column.values().stream().allMatch(value -> value.contains(mark)))
        .filter(
            mark ->
                column.values().stream()
                    .map(value -> value.replace(mark, "").strip())
                    .anyMatch(value -> known.find(value).isPresent()))
        .findFirst()
        .ifPresent(
            mark ->
                draft.setting(
                    "The %s is written with \"%s\" here, in the shop's files without."
                        .formatted(field, mark),
                    "omit." + field + '=' + (mark.isBlank() ? "space" : mark)));
  }

  /** Adds the values of the body column that mean "no body". */
  private void addNoBody(Column column) {
    column.values().stream()
        .distinct()
        .filter(value -> value.matches("0+|-+") && !shop.bodies().containsKey(value))
        .forEach(
            value ->
                draft.setting("Body " + value + " stands for none.", "value.body." + value + '='));
  }

  /** What all texts begin with up to a mark that is no letter or digit, without blanks. */
  private static Optional<String> commonBeginning(List<String> texts) {
    String first = texts.stream().findFirst().orElse("");
    return IntStream.rangeClosed(1, first.length())
        .mapToObj(length -> first.substring(0, length))
        .filter(begin -> begin.matches(".*[^\\p{L}\\d]"))
        .filter(begin -> texts.stream().allMatch(text -> text.startsWith(begin)))
        .reduce((shorter, longer) -> longer)
        .map(String::strip)
        .filter(begin -> !begin.isEmpty());
  }

  /** The usual plan of in-store numbers: a prefix, five digits of item, five of weight, a check. */
  private static String inStore(String number) {
    int plan = "IIIIIWWWWWC".length();
    return number.substring(0, Math.max(0, number.length() - plan)) + "IIIIIWWWWWC";
  }

  /** Keeps out columns that have the name of a field and hold something else. */
  private void addUnread() {
    for (var column : draft.unused()) {
      String name = column.header().strip().toLowerCase(Locale.ROOT);
      boolean inTwo = name.equals("time") && (draft.has("date") || draft.has("clock"));
      boolean given = draft.has(name) || draft.isWithheld(name) || inTwo;
      if (!given && Field.of(name).isPresent()) {
        draft.add("column." + name + '=');
      }
    }
  }

  private void addUnits() {
    draft.cells("unit").stream()
        .distinct()
        .filter(word -> !word.isEmpty() && WeightUnit.of(word).isEmpty())
        .forEach(
            word ->
                draft.add(
                    "value.unit."
                        + LayoutDraft.escaped(word)
                        + '='
                        + GuessWords.unit(word).orElseThrow()));
  }

  /** Asks of a saved layout that reads no status whether it should. */
  private void askSavedForStatus(List<String> values) {
    if (saved && !goesOn && draft.has("status")) {
      var lines = Stream.concat(Stream.of(draft.column("status").line("status")), values.stream());
      draft.ask(
          "Does " + draft.column("status").name() + " say which weighings count?",
          List.of(lines.toList(), List.of("column.status=")));
    }
  }

  // What no column gives.

  private void addScale() {
    var scales = shop.scales().keySet().stream().sorted().toList();
    if (draft.has("scale")) {
      addScales(scales);
    } else if (isNewScale) {
      return;
    } else if (scales.size() == 1 && !scales.contains(name)) {
      draft.setting("The shop has one scale.", "constant.scale=" + scales.get(0));
    } else if (!scales.contains(name)) {
      draft.ask(
          "Which scale wrote it? Name the folder after it, or say which it is, or which column says"
              + " it.",
          Stream.concat(
                  scales.stream().map(id -> List.of("constant.scale=" + id)),
                  left("scale", column -> isOfScales(column, scales.size())))
              .toList());
    }
  }

  /** Whether a column has no more values than there are scales, and more than one. */
  private static boolean isOfScales(Column column, int scales) {
    long values = column.values().stream().distinct().count();
    return values > 1 && values <= scales && !column.cells().contains("");
  }

  /** Whether a column may name the scales of a shop of which none is known: it holds no weights. */
  static boolean isOfSeveralScales(Column column) {
    boolean areWeights =
        GuessNumbers.isNumeric(column)
            && column.values().stream().map(String::length).distinct().count() > 1
            && column.values().stream().anyMatch(value -> value.length() > 2);
    return isOfScales(column, MOST_SCALES) && !areWeights && !GuessFields.isBesideWeight(column);
  }

  /** Asks which scale of the shop is meant by each name that the shop does not have. */
  private void addScales(List<String> scales) {
    var named = draft.cells("scale").stream().filter(text -> !text.isEmpty()).distinct().toList();
    if (scales.isEmpty() || named.stream().anyMatch(scales::contains)) {
      return;
    }
    for (String text : named) {
      String key = "value.scale." + LayoutDraft.escaped(text) + '=';
      var like = scales.stream().filter(text::equalsIgnoreCase).findFirst();
      like.ifPresentOrElse(
          id -> draft.add(key + id),
          () ->
              draft.ask(
                  "Which scale of scales.csv is \"%s\"?".formatted(text),
                  scales.stream().map(id -> List.of(key + id)).toList(),
                  draft.cells("scale").indexOf(text)));
    }
  }

  /** Asks whether a column is of batches that all rows of tubs fill and none of bodies does. */
  private void askForBatches() {
    var steps = new HashMap<String, Step>();
    shop.codes().forEach(code -> steps.put(code.pattern(), code.step()));
    var codes = CodeIndex.of(shop);
    var ofRows =
        draft.cells("code").stream()
            .map(code -> codes.find(code).map(steps::get).orElse(Step.OTHER))
            .toList();
    if (!draft.has("batch") && ofRows.contains(Step.TUB)) {
      draft.unused().stream()
          .filter(column -> !GuessWords.isOther(column.header()))
          .filter(column -> column.values().stream().allMatch(value -> value.matches(".*\\d.*")))
          .filter(column -> column.values().stream().distinct().count() < column.values().size())
          .filter(
              column -> IntStream.range(0, ofRows.size()).allMatch(i -> mayFill(column, i, ofRows)))
          .findFirst()
          .ifPresent(
              column ->
                  draft.ask(
                      "Does %s name the batch that tubs go into and sausages come out of?"
                          .formatted(column.name()),
                      List.of(List.of(column.line("batch")), List.of("column.batch=")),
                      ofRows.indexOf(Step.TUB)));
    }
  }

  /** Whether a batch may stand in a row, or be missing there, by the steps of all rows. */
  private static boolean mayFill(Column column, int row, List<Step> steps) {
    boolean filled = !column.cells().get(row).isEmpty();
    return switch (steps.get(row)) {
      case TUB -> filled;
      case ADDED, PACK -> true;
      default -> !filled;
    };
  }

  private void addMissing() {
    boolean barcode = draft.has(Layout.BARCODE);
    if (!draft.has("time") && !draft.has("date") && !draft.isWithheld("date") && !barcode) {
      draft.ask(NO_DATE + ", and write:", List.of(List.of(DATE_IN_NAME)));
    }
    if (!draft.has("code") && !barcode) {
      draft.leaveOut("code");
      var all = List.of("constant.code=" + name.toUpperCase(Locale.ROOT));
      draft.ask(
          "Which column has the codes? Or do all rows have one code?",
          Stream.concat(left("code", column -> !GuessFields.isBesideWeight(column)), Stream.of(all))
              .toList());
    }
    if (!draft.has("net") && !draft.has("gross") && !barcode) {
      var columns = left("net", column -> numbers.numbers(column).isPresent()).toList();
      var sure = draft.unused().stream().filter(weights::isOfRail).toList();
      if (columns.isEmpty()) {
        draft.tell("No column is a weight: let the scale print it.");
      } else if (columns.size() == 1 && sure.size() == 1) {
        draft.add("# The one column of weights; in another unit no part of the rail is as light.");
        columns.get(0).forEach(draft::add);
      } else {
        boolean isOne =
            columns.stream().map(lines -> lines.get(lines.size() - 1)).distinct().count() < 2;
        draft.ask(
            isOne && columns.size() > 1
                ? "How are the weights to be read? %s is the only column that may have them."
                    .formatted(
                        columns.get(0).get(columns.get(0).size() - 1).replaceFirst(".*=", ""))
                : "Which column is the weight?",
            columns);
      }
    }
    if (!draft.has("body") && !barcode) {
      draft.tell(
          "No column names the body. If one does, write column.body= with its name; else say in"
              + " bench.csv from when to when which was cut.");
    }
  }

  /** The lines with which each column that is left and fits would be read as a field. */
  private Stream<List<String>> left(String field, Predicate<Column> fits) {
    return draft.unused().stream()
        .filter(column -> !column.values().isEmpty())
        .filter(fits)
        .flatMap(
            column ->
                field.equals("net")
                    ? weights.readings(column).stream()
                    : Stream.of(List.of(column.line(field))));
  }

  private void addIdentity() {
    if (draft.isWithheld("ticket")) {
      return;
    }
    if (!draft.has("ticket")) {
      draft.setting(
          "The scale counts no tickets: a row is known by these fields. Equal rows of one file all"
              + " count; rows that two files have count once.",
          IDENTITY);
    } else if (startsAgain()) {
      draft.setting(
          "The numbers of "
              + draft.column("ticket").name()
              + " come again within a day: a row is known by these fields together.",
          "identity=ticket,time,body,code,net");
    }
  }

  /** Whether two tickets or more stand twice on one day with different content. */
  private boolean startsAgain() {
    var first = new HashMap<String, List<String>>();
    var again = new HashSet<String>();
    for (int i = 0; i < table.rows().size(); i++) {
      var cells = table.rows().get(i).csv().cells();
      String key = String.join("\n", draft.cell("scale", i), draft.cell("ticket", i), draft.day(i));
      if (!GuessWords.mentionsVoid(draft.cell("status", i))
          && !first.computeIfAbsent(key, k -> cells).equals(cells)) {
        again.add(key);
      }
    }
    return again.size() > 1;
  }
}
