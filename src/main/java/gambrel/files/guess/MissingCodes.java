package gambrel.files.guess;

import gambrel.files.csv.NameComparison;
import gambrel.files.folder.Addition;
import gambrel.files.folder.ItemNames;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.Groups;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.CodeIndex;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import gambrel.trade.shop.UnreadRow;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows that codes.csv lacks, ready to paste. */
final class MissingCodes {
  /** The two sides of a body differ by less than this factor. */
  private static final BigDecimal MOST_UNLIKE = new BigDecimal("1.25");

  /** No code of the rail weighs less than half of another one of its body. */
  private static final BigDecimal TWICE = BigDecimal.valueOf(2);

  /**
   * The kinds that are offered where a name is only like that of an item. No tub is taken for bone,
   * fat or waste by likeness: nothing would show that it was meat.
   */
  private static final Set<Kind> BY_LIKENESS =
      Set.of(Kind.CARCASE, Kind.PIECE, Kind.MEAT, Kind.TRIM, Kind.OFFAL);

  private static final String COLUMNS = "code,item,step,description";

  private static final String PACKED = "," + Step.PACK.id();

  /** How rows are finished that are saved without an item. */
  private static final String NO_ITEM =
      "Write the cut between the commas, in your own words without a comma, and bin for pack where"
          + " nobody takes it home.";

  /** How rows are finished that are saved without a step. */
  private static final String NO_STEP =
      "Behind the part that hangs write hot or cold, as in side,hot.";

  private static final String BINNED = "," + Step.BIN.id();

  /** Something put into a batch that is no item. */
  private static final String ADDED = "," + Step.ADDED.id();

  /** What test weights weigh, but for powers of ten (OIML R 111; 25 is common practice). */
  private static final Set<String> NOMINAL = Set.of("1", "2", "5", "25");

  /** A text with a word that is long enough to say something. */
  private static final String WORD = ".*\\p{L}{3}.*";

  private final Shop shop;
  private final CodeIndex known;
  private final IdIndex bodies;

  /** By tag the body that has it. */
  private final Map<String, String> tags = new HashMap<>();

  private final ItemNames names;
  private final Set<Species> species;

  /** By code, numbers by their size, its name and its rows. */
  private final TreeMap<String, Missing> missing =
      new TreeMap<>(
          Comparator.comparing((String c) -> c.matches("\\d+") ? "%18s".formatted(c) : c)
              .thenComparing(c -> c));

  /** By body and code what was weighed, in kilograms. */
  private final Map<String, Map<String, BigDecimal>> weights = new HashMap<>();

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

  MissingCodes(Shop shop) {
    this.shop = shop;
    this.known = CodeIndex.of(shop);
    this.bodies = new IdIndex(shop.bodies().keySet());
    shop.bodies().values().forEach(body -> body.tags().forEach(tag -> tags.put(tag, body.id())));
    this.names = new ItemNames(shop.cuts(), shop.settings().region());
    this.species = shop.bodies().values().stream().map(Body::species).collect(Collectors.toSet());
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
      AsRead.weight(row)
          .flatMap(weight -> row.unit().map(unit -> unit.kilograms(weight)))
          .ifPresent(
              weight ->
                  weights
                      .computeIfAbsent(body(row), body -> new HashMap<>())
                      .merge(code, weight, BigDecimal::add));
      boolean isWeighing = row.row().broken().isEmpty() && !row.removed() && !row.status().isVoid();
      boolean isUnread = !shop.unread("codes.csv", "code", code).isEmpty();
      hasUnread |= isUnread;
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
            tests.add(row(code, ',' + Step.TEST.id(), of) + ',' + nominal(of));
            return;
          }
          var named = named(code, of);
          boolean isSure = named.size() == 1 && isOfAll(named.get(0), of);
          var meanings = isSure || named.size() > 1 ? named : near(code, of);
          boolean isNamed = isSure && !of.name().isEmpty();
          (meanings.isEmpty() ? Stream.of("ITEM,STEP") : meanings.stream())
              .map(meaning -> isNamed ? row(code, meaning, of) : called(code, meaning, of, !isSure))
              .forEach((isSure ? sure : open)::add);
          if (meanings.isEmpty()) {
            unfinished.add(row(code, PACKED, of));
            how.add(NO_ITEM);
          } else if (!isSure && meanings.size() == 1 && isOfRail(meanings.get(0))) {
            unfinished.add(row(code, meanings.get(0).replaceFirst(",.*", ","), of));
            how.add(NO_STEP);
          }
        });
    var lines = new ArrayList<String>();
    tellUnfinished(lines);
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

  private static boolean isOfRail(String meaning) {
    return FileWord.find(Step.class, meaning.replaceFirst(".*,", ""))
        .filter(Step::isRail)
        .isPresent();
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
          "codes.csv has %d rows to be finished, from line %d on. %s"
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

  private static String row(String code, String meaning, Missing of) {
    return String.join(",", code, meaning, quoted(of.name()));
  }

  /** A row that ends with what pages call its items; of one that is sure, if not as the code. */
  private String called(String code, String meaning, Missing of, boolean isOffer) {
    String pages = onPages(meaning, likely(of));
    boolean isSaid =
        pages.isEmpty()
            || !isOffer && NameComparison.plain(pages).equals(NameComparison.plain(code));
    return isSaid ? row(code, meaning, of) : String.join(",", code, meaning, quoted(pages));
  }

  /**
   * What English pages call the items of a pack, species by species; empty for another step or
   * language.
   */
  private String onPages(String meaning, Set<Species> species) {
    var items = List.of(meaning.replaceFirst(",.*", "").split(Pattern.quote(ScaleCode.PARTED)));
    return species.stream()
        .filter(one -> meaning.endsWith(PACKED) && shop.settings().language().equals("en"))
        .sorted()
        .flatMap(one -> items.stream().flatMap(item -> shop.cuts().of(one).find(item).stream()))
        .map(Item::name)
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  /** Whether every species of which a code is keyed has an item that is meant. */
  private boolean isOfAll(String meaning, Missing of) {
    var items = List.of(meaning.replaceFirst(",.*", "").split(Pattern.quote(ScaleCode.PARTED)));
    return items.equals(List.of(""))
        || species(of).stream()
            .allMatch(one -> items.stream().anyMatch(i -> shop.cuts().of(one).find(i).isPresent()));
  }

  /**
   * Whether no row of a code names a body or batch, though those of other codes name bodies. So are
   * test weights, with the weight that they should have.
   */
  private boolean isOfNobody(Missing of) {
    return of.isWithout(Field.BODY)
        && of.isWithout(Field.BATCH)
        && weights.keySet().stream().anyMatch(body -> !body.isEmpty());
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

  private static String quoted(String name) {
    return name.indexOf(',') < 0 ? name : '"' + name.replace("\"", "\"\"") + '"';
  }

  /** Item and step of all that a code has just the words of; two where these mean two. */
  private List<String> named(String code, Missing of) {
    return Stream.of(of.name(), code)
        .map(text -> named(text, likely(of)))
        .filter(found -> !found.isEmpty())
        .findFirst()
        .map(
            found ->
                isOfSides(code, of) ? found.stream().flatMap(MissingCodes::orSide) : found.stream())
        .map(found -> found.distinct().toList())
        .orElse(List.of());
  }

  /** Item and step of a text that names a step of the rail, items, or something added. */
  private List<String> named(String text, Set<Species> likely) {
    var step = FileWord.find(Step.class, text).filter(Step::isRail);
    var items = ofSpecies(names.named(text, likely), likely);
    return step.isPresent()
        ? List.of(CutTree.ROOT + ',' + step.get().id())
        : items.isEmpty()
            ? GuessWords.meaning(text).or(() -> hung(text, likely)).stream().toList()
            : items;
  }

  /** A part with its step of a text that has words of both, such as HOT SIDE L or LAMB COLD. */
  private Optional<String> hung(String text, Set<Species> likely) {
    String words = GuessWords.withoutRail(text);
    String part = GuessWords.withoutSide(words);
    var parts =
        names.named(part.isEmpty() && !words.isEmpty() ? CutTree.SIDE : part, likely).stream()
            .filter(item -> item.kind() == Kind.CARCASE)
            .map(Item::id)
            .distinct()
            .toList();
    var id =
        ItemNames.isOfSpecies(part)
            ? Optional.of(CutTree.ROOT)
            : parts.stream().filter(only -> parts.size() == 1).findFirst();
    return GuessWords.railStep(text).flatMap(step -> id.map(of -> of + ',' + step.id()));
  }

  /** Items, each with its step. Where each of several species has one of them, they share a row. */
  private List<String> ofSpecies(List<Item> items, Set<Species> of) {
    var each = items.stream().flatMap(MissingCodes::withStep).toList();
    var steps = each.stream().map(meaning -> meaning.replaceFirst(".*,", "")).distinct().toList();
    boolean isOneEach =
        items.size() > 1
            && steps.size() == 1
            && of.stream()
                .allMatch(one -> items.stream().filter(item -> has(one, item)).count() == 1);
    return isOneEach
        ? List.of(
            items.stream().map(Item::id).collect(Collectors.joining(ScaleCode.PARTED))
                + ','
                + steps.get(0))
        : each;
  }

  /** Item and step of what a code may mean, though it has not just the words of it. */
  private List<String> near(String code, Missing of) {
    String text = of.name().isEmpty() ? code : of.name();
    if (!text.matches(WORD)) {
      return of.isOfBatches() ? List.of(ADDED) : onRail(code, of).toList();
    }
    var likely = likely(of);
    var items =
        likely.stream()
            .sorted()
            .flatMap(
                one -> names.nearest(text, Set.of(one)).stream().filter(item -> has(one, item)))
            .filter(item -> BY_LIKENESS.contains(item.kind()))
            .filter(item -> !item.id().matches("(left|right)-.*"))
            .distinct()
            .toList();
    var meant = ofAll(items, likely);
    var added =
        Stream.of(text.split(GuessWords.BETWEEN))
            .flatMap(word -> GuessWords.meaning(word).stream())
            .filter(ADDED::equals);
    boolean unsaid = of.name().isEmpty() && meant.isEmpty();
    var first =
        of.isOfBatches() ? Stream.of(ADDED) : unsaid ? onRail(code, of) : Stream.<String>of();
    var other = GuessWords.railStep(text).map(step -> step == Step.HOT ? Step.COLD : Step.HOT);
    return Stream.of(first, added, meant.stream())
        .flatMap(meanings -> meanings)
        .filter(meaning -> other.filter(step -> meaning.endsWith(',' + step.id())).isEmpty())
        .distinct()
        .toList();
  }

  /**
   * Each item that all species have, with its step; else the first of each species together; else
   * each one.
   */
  private List<String> ofAll(List<Item> items, Set<Species> species) {
    var shared = items.stream().filter(i -> species.stream().allMatch(s -> has(s, i))).toList();
    if (!shared.isEmpty()) {
      return shared.stream().flatMap(MissingCodes::withStep).toList();
    }
    var firsts =
        species.stream()
            .flatMap(one -> items.stream().filter(item -> has(one, item)).limit(1))
            .distinct()
            .toList();
    return species.size() > 1 && firsts.size() == species.size()
        ? ofSpecies(firsts, species)
        : items.stream().flatMap(MissingCodes::withStep).toList();
  }

  private boolean has(Species one, Item item) {
    return shop.cuts().of(one).find(item.id()).isPresent();
  }

  private Set<Species> likely(Missing of) {
    var own = species(of);
    return own.isEmpty() ? species : own;
  }

  /** The species of the bodies of which a code is keyed. */
  private Set<Species> species(Missing of) {
    return byBody(of).keySet().stream()
        .flatMap(body -> species(body).stream())
        .collect(Collectors.toSet());
  }

  /** The id of the body that a row names by that or a tag; else what it names. */
  private String body(ReadRow row) {
    String text = row.row().get(Field.BODY);
    return bodies.find(text).orElse(tags.getOrDefault(text, text));
  }

  private Map<String, List<ReadRow>> byBody(Missing of) {
    return Groups.inOrder(of.rows().stream(), this::body);
  }

  private Optional<Species> species(String body) {
    return Optional.ofNullable(shop.bodies().get(body)).map(Body::species);
  }

  /**
   * A code without a name may be of the rail if each body has it once, as a carcase, or it is of
   * sides.
   */
  private Stream<String> onRail(String code, Missing of) {
    boolean once = byBody(of).values().stream().allMatch(rows -> rows.size() == 1);
    return isOfSides(code, of)
        ? byDay(CutTree.SIDE, of)
        : once && isHeavy(code, of) ? byDay(CutTree.ROOT, of) : Stream.of();
  }

  /**
   * Hot weights are taken on the day of the kill, cold ones later; by either if that is unknown.
   */
  private Stream<String> byDay(String item, Missing of) {
    var fresh = of.rows().stream().map(this::isOfKillDay).distinct().toList();
    var step =
        fresh.size() == 1
            ? fresh.get(0).map(is -> is ? Step.HOT : Step.COLD)
            : Optional.<Step>empty();
    return step.map(one -> Stream.of(item + ',' + one.id())).orElseGet(() -> onRail(item));
  }

  /** Whether a row was weighed on the day on which its body was killed; empty if not known. */
  private Optional<Boolean> isOfKillDay(ReadRow row) {
    return Optional.ofNullable(shop.bodies().get(body(row)))
        .flatMap(Body::killed)
        .flatMap(killed -> row.time().map(time -> time.toLocalDate().equals(killed)));
  }

  /** Whether no code of a body has more than twice the weight, as only those of the rail have. */
  private boolean isHeavy(String code, Missing of) {
    return byBody(of).keySet().stream()
        .map(body -> weights.getOrDefault(body, Map.of()))
        .allMatch(
            its ->
                its.values().stream()
                    .noneMatch(
                        other ->
                            its.getOrDefault(code, BigDecimal.ZERO).multiply(TWICE).compareTo(other)
                                < 0));
  }

  /** Whether most bodies of a species have two rows of the code as their two sides have. */
  private boolean isOfSides(String code, Missing of) {
    return isHeavy(code, of)
        && Groups.inOrder(byBody(of).entrySet().stream(), body -> species(body.getKey()))
            .values()
            .stream()
            .anyMatch(
                ofSpecies ->
                    ofSpecies.stream().filter(body -> areSides(body.getValue())).count() * 2
                        > ofSpecies.size());
  }

  /** Whether rows are two, within an hour, and neither weighs a quarter more than the other. */
  private static boolean areSides(List<ReadRow> rows) {
    var times = rows.stream().flatMap(row -> row.time().stream()).sorted().toList();
    var weights = rows.stream().flatMap(row -> AsRead.weight(row).stream()).sorted().toList();
    return rows.size() == 2
        && times.size() == 2
        && weights.size() == 2
        && times.get(0).plusHours(1).isAfter(times.get(1))
        && weights.get(1).compareTo(weights.get(0).multiply(MOST_UNLIKE)) < 0;
  }

  /** A weight of the whole carcase, before it the same of a side. */
  private static Stream<String> orSide(String meaning) {
    return meaning.startsWith(CutTree.ROOT + ',')
        ? Stream.of(CutTree.SIDE + meaning.substring(CutTree.ROOT.length()), meaning)
        : Stream.of(meaning);
  }

  private static Stream<String> onRail(String item) {
    return Stream.of(Step.HOT, Step.COLD).map(step -> item + ',' + step.id());
  }

  private static Stream<String> withStep(Item item) {
    return switch (item.kind()) {
      case BONE, FAT, WASTE ->
          Stream.of(item.id() + BINNED, item.id() + PACKED)
              .limit(CutTree.USUALLY_BIN.contains(item.id()) ? 1 : 2);
      case TRIM -> Stream.of(item.id() + ",tub");
      case CARCASE -> onRail(item.id());
      case ADDED -> Stream.of(item.id() + ADDED);
      default -> Stream.of(item.id() + ",pack");
    };
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
