package gambrel.files.folder;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Facts;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Foods;
import gambrel.trade.cuts.Foods.Food;
import gambrel.trade.cuts.Foods.Span;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.shop.PublishedRanges;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables that are resources of the program. */
public final class BuiltInTables {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private static final Map<String, List<CSVRecord>> ROWS = new ConcurrentHashMap<>();

  /** The languages of the pages but English. */
  private static final List<String> LANGUAGES = List.of("de", "es", "fr");

  private BuiltInTables() {}

  /**
   * The cut trees of all species with the names and parents of a region, from one table a species.
   * The columns {@code name} and {@code parent} hold the Australian form; a blank regional column
   * means the same.
   *
   * <p>Item ids and the way parts nest follow the cut descriptions of the UN/ECE standards for
   * bovine and ovine meat (ECE/TRADE/326 and 308). The column {@code unece} holds only numbers seen
   * in print: in the UN/ECE working papers of 2012 and retail cut standard of 2013, and in the
   * Handbook of Australian Meat, whose numbers the UN/ECE standards share. Regional names and
   * breaks are common practice of the trade.
   *
   * <p>The columns {@code food}, {@code bone}, {@code vertebra}, {@code minced} and {@code offal}
   * are the item's {@link Facts}; a blank cell takes the fact of the item's parent. What has bone
   * or vertebrae in it is common practice of the trade.
   */
  public static CutTrees cuts(Region region) {
    var trees = new EnumMap<Species, CutTree>(Species.class);
    for (var species : Species.values()) {
      var rows = rows("cuts/" + species.id());
      var items = rows.stream().map(row -> item(row, region)).toList();
      trees.put(species, CutTree.of(species, items));
    }
    return new CutTrees(trees);
  }

  /**
   * What else the items of a species are called in a region, and in the other languages of the
   * pages, by item. The columns {@code also} are common practice of the trade; a blank regional
   * cell means the default.
   */
  static Map<String, List<String>> also(Species species, Region region) {
    var languages = LANGUAGES.stream().map(BuiltInTables::names).toList();
    var also = new HashMap<String, List<String>>();
    for (var row : rows("cuts/" + species.id())) {
      String item = row.get("item");
      String column = region == Region.US ? "also_us" : "also";
      var own =
          Stream.of(column, "also")
              .filter(row::isSet)
              .map(row::get)
              .filter(names -> !names.isEmpty())
              .limit(1)
              .flatMap(names -> Stream.of(names.split(";")));
      var foreign =
          languages.stream()
              .map(names -> names.getProperty(species.id() + '.' + item, names.getProperty(item)))
              .filter(Objects::nonNull)
              .flatMap(name -> Stream.of(name.split("[()]")));
      also.put(item, Stream.concat(own, foreign).toList());
    }
    return also;
  }

  /** By word the species that it means: its id, and the column {@code also} from memory. */
  static Map<String, Species> speciesWords() {
    var words = new HashMap<String, Species>();
    for (var row : rows("cuts/species")) {
      var species = FileWord.find(Species.class, row.get("species")).orElseThrow();
      words.put(species.id(), species);
      Stream.of(row.get("also").split(";")).forEach(word -> words.put(word, species));
    }
    return words;
  }

  /** The names of items in a language. */
  private static Properties names(String language) {
    String path = "/gambrel/templates/cuts_" + language + ".properties";
    try (var in = BuiltInTables.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new FileNotFoundException(path);
      }
      var names = new Properties();
      names.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return names;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Item item(CSVRecord row, Region region) {
    return new Item(
        row.get("item"),
        regional(row, "parent", region),
        regional(row, "name", region),
        FileWord.find(Kind.class, row.get("kind")).orElseThrow(),
        cell(row, "count", Integer::valueOf).orElse(1),
        cell(row, "unece", codes -> List.of(codes.split(" "))).orElse(List.of()),
        false,
        facts(row));
  }

  private static Facts facts(CSVRecord row) {
    return new Facts(
        cell(row, "food", food -> food),
        cell(row, "bone", "yes"::equals),
        cell(row, "vertebra", "yes"::equals),
        cell(row, "minced", "yes"::equals),
        cell(row, "offal", line -> Offal.valueOf(line.toUpperCase(Locale.ROOT))));
  }

  private static String regional(CSVRecord row, String column, Region region) {
    var own = row.get(of(column, region));
    return own.isEmpty() ? row.get(column) : own;
  }

  /**
   * How food keeps and is cooked by the advice of a region, each number with its source. The first
   * two rows, {@code fridge} and {@code freezer}, hold only the highest temperatures of these.
   */
  public static Foods foods(Region region) {
    var rows = rows("food");
    return new Foods(
        degrees(rows.get(0), region).orElseThrow(),
        degrees(rows.get(1), region).orElseThrow(),
        rows.stream().skip(2).map(row -> food(row, region)).toList());
  }

  private static Food food(CSVRecord row, Region region) {
    return new Food(
        row.get("food"),
        cell(row, "kind", kind -> FileWord.find(Kind.class, kind).orElseThrow()),
        Stream.of(row.get("species").split(" "))
            .map(species -> FileWord.find(Species.class, species).orElseThrow())
            .collect(Collectors.toSet()),
        cell(row, "fridge_days", BuiltInTables::span),
        cell(row, "freezer_months", BuiltInTables::span),
        degrees(row, region),
        cell(row, of("minutes", region), Integer::valueOf));
  }

  private static Optional<BigDecimal> degrees(CSVRecord row, Region region) {
    return cell(row, of("degrees", region), BigDecimal::new);
  }

  /** The column of a region. */
  private static String of(String column, Region region) {
    return region == Region.AU ? column : column + "_" + region.id();
  }

  /** {@code 3-5}, or {@code 7} where one number is published. */
  private static Span span(String text) {
    var ends = List.of(text.split("-"));
    return new Span(Integer.parseInt(ends.get(0)), Integer.parseInt(ends.get(ends.size() - 1)));
  }

  /** The published ranges, each with its source. */
  public static PublishedRanges ranges() {
    return new PublishedRanges(rows("ranges").stream().map(BuiltInTables::range).toList());
  }

  private static PublishedRanges.Published range(CSVRecord row) {
    return new PublishedRanges.Published(
        row.get("species"),
        row.get("figure"),
        row.get("region"),
        cell(row, "class", classes -> List.of(classes.split(" "))).orElse(List.of()),
        cell(row, "days", Integer::valueOf),
        new PublishedRanges.Range(
            new BigDecimal(row.get("low")),
            new BigDecimal(row.get("high")),
            row.get("about"),
            row.get("source")));
  }

  /** The rows of {@code /gambrel/NAME.csv}, which is read once. */
  static List<CSVRecord> rows(String name) {
    return ROWS.computeIfAbsent(name, BuiltInTables::read);
  }

  private static List<CSVRecord> read(String name) {
    String path = "/gambrel/" + name + ".csv";
    try (var in = BuiltInTables.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new FileNotFoundException(path);
      }
      return FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The value of a cell; empty if it is blank. */
  static <T> Optional<T> cell(CSVRecord row, String column, Function<String, T> read) {
    return Optional.of(row.get(column)).filter(text -> !text.isEmpty()).map(read);
  }
}
