package gambrel.files.guess;

import gambrel.files.csv.NameComparison;
import gambrel.files.folder.Addition;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.PastedRow;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import gambrel.trade.shop.UnreadRow;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows that codes.csv lacks, ready to paste. */
final class MissingCodes {
  private static final String COLUMNS = "code,item,step,description";

  /** How rows are finished that are saved without an item. */
  private static final String NO_ITEM =
      "Write the cut between the commas, in your own words without a comma, and bin for pack where"
          + " nobody takes it home.";

  /** How rows are finished that are saved without a step. */
  private static final String NO_STEP =
      "Behind the part that hangs write hot or cold, as in side,hot.";

  /** What test weights weigh, but for powers of ten (OIML R 111; 25 is common practice). */
  private static final Set<String> NOMINAL = Set.of("1", "2", "5", "25");

  /** A text with a word that is long enough to say something. */
  private static final String WORD = ".*\\p{L}{3}.*";

  private final Shop shop;
  private final CodeIndex known;
  private final CodeWeighings weighings;
  private final CodeMeanings meanings;

  /** By code, numbers by their size, its name and its rows. */
  private final TreeMap<String, Missing> missing =
      new TreeMap<>(
          Comparator.comparing((String c) -> c.matches("\\d+") ? "%18s".formatted(c) : c)
              .thenComparing(c -> c));

  /** By item of codes.csv that is none the species for which its codes are keyed. */
  private final Map<String, Set<Species>> own = new TreeMap<>();

  private boolean hasUnread;

  private record Missing(String name, List<ReadRow> rows) {
    boolean isWithout(Field field) {
      return rows.stream().allMatch(row -> row.row().get(field).isEmpty());
    }

    /** Whether every row names a batch and no body. */
    boolean isOfBatches() {
      return isWithout(Field.BODY)
          && rows.stream().noneMatch(row -> row.row().get(Field.BATCH).isEmpty());
    }
  }

  /** Those of a shop; {@code meanings} of its words. */
  MissingCodes(Shop shop, CodeMeanings meanings) {
    this.shop = shop;
    this.known = CodeIndex.of(shop);
    this.weighings = new CodeWeighings(shop);
    this.meanings = meanings;
  }

  /** Adds the codes of exports. */
  void add(AsRead read, GuessTable table) {
    var texts = names(read.layout().positions(table.top()), table);
    var rows =
        read.rows().stream()
            .filter(row -> read.comparison().disposition(row) != RowDisposition.REPEAT)
            .toList();
    for (var row : rows) {
      String code = row.row().get(Field.CODE);
      weighings.add(row);
      boolean isWeighing = row.row().broken().isEmpty() && !row.removed() && !row.status().isVoid();
      var unread = shop.unread("codes.csv", "code", code);
      boolean isUnread = !unread.isEmpty();
      hasUnread |= isUnread;
      unread.stream()
          .filter(bad -> bad.column().equals("item") && bad.cell().matches(WORD))
          .map(UnreadRow::cell)
          .forEach(
              cell ->
                  own.computeIfAbsent(cell, of -> EnumSet.noneOf(Species.class))
                      .addAll(weighings.species(List.of(row))));
      if (!code.isEmpty() && isWeighing && !isUnread && known.find(code).isEmpty()) {
        missing
            .computeIfAbsent(
                code, c -> new Missing(texts.getOrDefault(code, ""), new ArrayList<>()))
            .rows()
            .add(row);
      }
    }
  }

  /** Whether the row of a code that is keyed cannot be read; the notices say which. */
  boolean hasUnread() {
    return hasUnread;
  }

  /** The codes that are missing. */
  Set<String> all() {
    return Set.copyOf(missing.keySet());
  }

  /**
   * The rows that codes.csv lacks.
   *
   * @param lines what is to be said; none if no code is missing
   * @param additions the rows that are ready, and those that a person can finish in the file
   */
  record Told(List<String> lines, List<Addition> additions) {}

  /** Finds the rows of the missing codes. */
  Told told() {
    var sure = new ArrayList<String>();
    var open = new ArrayList<String>();
    var unfinished = new ArrayList<String>();
    var how = new TreeSet<String>();
    var tests = new ArrayList<String>();
    missing.forEach(
        (code, of) -> {
          if (isOfNobody(of)) {
            tests.add(row(code, Meaning.TEST, of) + ',' + nominal(of));
            return;
          }
          var named = named(code, of);
          boolean isSure = named.size() == 1 && isOfAll(named.get(0), of);
          var found = isSure || named.size() > 1 ? named : near(code, of);
          boolean isNamed = isSure && !of.name().isEmpty();
          found.stream()
              .map(is -> isNamed ? row(code, is, of) : called(code, is, of, !isSure))
              .forEach((isSure ? sure : open)::add);
          if (found.isEmpty()) {
            open.add(PastedRow.of(code, "ITEM", "STEP", of.name()));
            unfinished.add(row(code, new Meaning("", Step.PACK), of));
            how.add(NO_ITEM);
          } else if (!isSure && found.size() == 1 && found.get(0).step().isRail()) {
            unfinished.add(PastedRow.of(code, found.get(0).item(), "", of.name()));
            how.add(NO_STEP);
          }
        });
    var lines = new ArrayList<String>();
    tellUnfinished(lines);
    tell(
        lines,
        "If it is none of the cuts named above, but one that only you make, put its row at the end of"
            + " cuts.csv. In place of carcase may stand what it is cut from:",
        own.entrySet().stream().flatMap(MissingCodes::ownCuts).toList());
    tell(lines, "codes.csv lacks codes. Look at these rows, then put them at its end:", sure);
    tell(
        lines,
        "codes.csv lacks these codes. Put the right row of each at its end; where none is right,"
            + " write what you call the cut in place of the item"
            + (open.stream().anyMatch(row -> row.contains(",STEP,"))
                ? ". STEP is hot, cold, pack, bin or tub:"
                : ":"),
        open);
    tell(
        lines,
        "codes.csv lacks the code of a test weight. Put this at its end; the last cell is what the"
            + " weight should weigh, in "
            + shop.settings().unit().id()
            + ':',
        tests);
    var additions = new ArrayList<Addition>();
    if (!sure.isEmpty()) {
      additions.add(new Addition("codes.csv", COLUMNS, sure, ""));
    }
    if (!unfinished.isEmpty()) {
      additions.add(new Addition("codes.csv", COLUMNS, unfinished, String.join(" ", how)));
    }
    return new Told(lines, additions);
  }

  /** The rows of codes.csv that have a blank for the item or the step. */
  List<UnreadRow> unfinished() {
    return shop.unread().stream()
        .filter(row -> row.place().file().equals("codes.csv") && row.cell().isEmpty())
        .filter(row -> List.of("item", "step").contains(row.column()))
        .toList();
  }

  private void tellUnfinished(List<String> lines) {
    var blank = unfinished();
    if (!blank.isEmpty()) {
      lines.add(
          "codes.csv has rows to be finished: %d, from line %d on. %s"
              .formatted(
                  blank.size(),
                  blank.get(0).place().line(),
                  blank.stream()
                      .map(row -> row.column().equals("item") ? NO_ITEM : NO_STEP)
                      .distinct()
                      .sorted()
                      .collect(Collectors.joining(" "))));
    }
  }

  /** The rows by which a text that is no item is a cut of each species. */
  private static Stream<String> ownCuts(Map.Entry<String, Set<Species>> own) {
    String name = own.getKey().strip();
    String id = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{M}\\d]+", "-");
    String called = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    return own.getValue().stream()
        .map(one -> PastedRow.of(one.id(), id, CutTree.ROOT, called, Kind.MEAT.id()));
  }

  private static String row(String code, Meaning meaning, Missing of) {
    return PastedRow.of(code, meaning.item(), meaning.step().id(), of.name());
  }

  /**
   * A row that ends with what English pages call its packs; that of one that is sure, if not as the
   * code.
   */
  private String called(String code, Meaning meaning, Missing of, boolean isOffer) {
    boolean isCalled = meaning.step() == Step.PACK && shop.settings().language().equals("en");
    String pages = isCalled ? meanings.onPages(meaning, likely(of)) : "";
    boolean isSaid =
        pages.isEmpty()
            || !isOffer && NameComparison.plain(pages).equals(NameComparison.plain(code));
    return isSaid
        ? row(code, meaning, of)
        : PastedRow.of(code, meaning.item(), meaning.step().id(), pages);
  }

  /** Whether every species of which a code is keyed has an item that is meant. */
  private boolean isOfAll(Meaning meaning, Missing of) {
    return meanings.isOfAll(meaning, weighings.species(of.rows()));
  }

  /**
   * Whether no row of a code names a body or batch, though those of other codes name bodies. So are
   * test weights, with the weight that they should have.
   */
  private boolean isOfNobody(Missing of) {
    return of.isWithout(Field.BODY) && of.isWithout(Field.BATCH) && weighings.nameBodies();
  }

  /** What a test weight should weigh: the nominal value that its weighings come near to, if any. */
  private String nominal(Missing of) {
    var near =
        of.rows().stream()
            .filter(row -> row.unit().filter(shop.settings().unit()::equals).isPresent())
            .flatMap(row -> AsRead.weight(row).stream())
            .map(weight -> weight.round(new MathContext(2)).stripTrailingZeros())
            .distinct()
            .toList();
    return near.size() == 1 && NOMINAL.contains(near.get(0).unscaledValue().toString())
        ? near.get(0).toPlainString()
        : "NOMINAL";
  }

  private static void tell(List<String> lines, String head, List<String> rows) {
    if (!rows.isEmpty()) {
      lines.add(head);
      rows.forEach(row -> lines.add("    " + row));
    }
  }

  /** What a code has just the words of; of a carcase as a side where each body has two. */
  private List<Meaning> named(String code, Missing of) {
    var found =
        Stream.of(of.name(), code)
            .map(text -> meanings.named(text, likely(of)))
            .filter(some -> !some.isEmpty())
            .findFirst()
            .orElse(List.of());
    boolean areSides = weighings.areOfSides(code, of.rows());
    return found.stream().map(is -> areSides ? asSide(is) : is).distinct().toList();
  }

  /** What a code may mean, though it has not just the words of it. */
  private List<Meaning> near(String code, Missing of) {
    String text = of.name().isEmpty() ? code : of.name();
    var onRail = weighings.onRail(code, of.rows());
    if (!text.matches(WORD)) {
      return of.isOfBatches() ? List.of(Meaning.ADDED) : onRail;
    }
    var meant = meanings.near(text, likely(of));
    var added =
        Stream.of(text.split(GuessWords.BETWEEN))
            .flatMap(word -> GuessWords.meaning(word).stream())
            .filter(Meaning.ADDED::equals);
    boolean unsaid = of.name().isEmpty() && meant.isEmpty();
    var first =
        of.isOfBatches() ? Stream.of(Meaning.ADDED) : onRail.stream().filter(meaning -> unsaid);
    var other = GuessWords.railStep(text).map(step -> step == Step.HOT ? Step.COLD : Step.HOT);
    return Stream.of(first, added, meant.stream())
        .flatMap(some -> some)
        .filter(meaning -> other.filter(meaning.step()::equals).isEmpty())
        .distinct()
        .toList();
  }

  private static Meaning asSide(Meaning meaning) {
    return meaning.item().equals(CutTree.ROOT)
        ? new Meaning(CutTree.SIDE, meaning.step())
        : meaning;
  }

  private Set<Species> likely(Missing of) {
    var own = weighings.species(of.rows());
    return own.isEmpty() ? shop.species() : own;
  }

  /** By code the text beside it, if the export has an unused column that goes with the code. */
  private static Map<String, String> names(Map<String, Integer> positions, GuessTable table) {
    var best = new TreeMap<String, String>();
    Integer code = positions.get(Field.CODE.id());
    if (code == null || code >= table.columns().size()) {
      return best;
    }
    var codes = table.columns().get(code).cells();
    for (var column : table.columns()) {
      var names = new TreeMap<String, String>();
      boolean goes = !positions.containsValue(column.number() - 1);
      for (int row = 0; row < codes.size(); row++) {
        String name = column.cells().get(row);
        goes &= name.isEmpty() || name.equals(names.getOrDefault(codes.get(row), name));
        names.put(codes.get(row), name);
      }
      boolean words = names.values().stream().anyMatch(text -> text.matches(WORD));
      if (goes
          && words
          && names.values().stream().distinct().count()
              > Math.max(names.size() == 1 ? 0 : 1, best.values().stream().distinct().count())) {
        best = names;
      }
    }
    return best;
  }
}
