package gambrel.oracle;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The exact figures of a shop folder at one moment by the second calculation, for tests that look
 * for them in everything that the program writes.
 */
public final class ExactNight {
  private final World world;
  private final Months months;
  private final Map<String, Map<String, BigFraction>> bodies = new HashMap<>();
  private final Map<String, Map<String, BigFraction>> sums = new HashMap<>();

  private ExactNight(World world) {
    this.world = world;
    months = new Months(world);
  }

  /**
   * A line of the picture on a statement.
   *
   * @param label the last part of the key of its words: {@code flow.LABEL}
   * @param weight its weight
   * @param percent of the first line, in whole tenths; the parts of a line add up to its own
   */
  public record Line(String label, BigFraction weight, BigFraction percent) {}

  /** Calculates a folder. */
  public static ExactNight of(Path shopFolder, OffsetDateTime asOf, TreeSource trees) {
    return new ExactNight(new World(new Setup(shopFolder, trees), asOf.toInstant()));
  }

  /** The tables that a first run over the folder should write. */
  public OracleTables tables() {
    return Oracle.tables(world);
  }

  /** The clauses of the contract that a folder meets on some nights, one after the other. */
  public static Set<String> clauses(List<ExactNight> nights) {
    var met = new TreeSet<>(ledger(nights).met());
    nights.forEach(night -> met.addAll(ClausesMet.of(night.world)));
    return met;
  }

  /** All clauses that random shops should meet. */
  public static List<String> allClauses() {
    return ClausesMet.ALL;
  }

  /**
   * The register after several nights, one after the other, and the tables that rest on it:
   * charges, accounts, and what is not finished.
   */
  public static OracleTables register(List<ExactNight> nights) {
    return new OracleTables(ledger(nights).tables());
  }

  private static Ledger ledger(List<ExactNight> nights) {
    var ledger = new Ledger();
    nights.forEach(night -> ledger.add(night.world));
    return ledger;
  }

  /** What {@code month-charts.csv} should hold. */
  public OracleTables charts() {
    return new OracleTables(Map.of("month-charts.csv", MonthCharts.of(months)));
  }

  /**
   * What {@code month-figures.csv} should hold.
   *
   * @param groups the groups that the file has, by month, figure and species parted by blanks: the
   *     bounds of bands are the program's own, and each band is checked by the bounds that it names
   */
  public OracleTables figures(Map<String, Set<String>> groups) {
    return new OracleTables(
        Map.of("month-figures.csv", new MonthTable(months, new MonthGroups(groups)).rows()));
  }

  /**
   * The money of every month by {@code month|figure|species|group}, see {@link MonthMoney}.
   *
   * @param data the program's {@code data} folder, for statements and their lines
   */
  public Map<String, String> money(Path shop, Path data) {
    return MonthMoney.of(months, shop, data);
  }

  /** The same figures as the program wrote them. */
  public static Map<String, String> printedMoney(Path data, Collection<String> figures) {
    var found = new TreeMap<String, String>();
    for (var row : Csv.read(data.resolve("month-figures.csv"))) {
      if (figures.contains(row.get("figure"))) {
        var key =
            List.of(row.get("month"), row.get("figure"), row.get("species"), row.get("group"));
        found.put(String.join("|", key), row.get("value"));
      }
    }
    return found;
  }

  /** The months that have a body, as {@code YYYY-MM}. */
  public List<String> months() {
    return months.all().stream().map(Object::toString).toList();
  }

  /** The figures of the bodies of a month; see {@link MonthNumbers}. */
  public Map<String, BigFraction> month(String month) {
    return sums.computeIfAbsent(month, of -> MonthNumbers.of(months, YearMonth.parse(of)));
  }

  /** Ids of all bodies that are not cancelled. */
  public Set<String> bodies() {
    return world.yields.keySet();
  }

  /** The species of a body. */
  public String species(String body) {
    return world.yields.get(body).body.beast.species();
  }

  /** The state of a body, as in {@code bodies.csv}. */
  public String state(String body) {
    return world.verdicts.get(body).state;
  }

  /** {@code whole} or {@code condemned}; empty for a body that is cut. */
  public String outcome(String body) {
    return world.yields.get(body).body.beast.outcome();
  }

  /** The figures of a body by the names of the columns of {@code bodies.csv} without a unit. */
  public Map<String, BigFraction> body(String body) {
    return bodies.computeIfAbsent(body, id -> BodyNumbers.of(world.yields.get(id)));
  }

  /** The figures of a body that belong to a month: hanging by the kill, cutting by the last cut. */
  public Map<String, BigFraction> body(String body, String month) {
    return months.figuresOf(body, YearMonth.parse(month));
  }

  /** What a customer has of a body, by the names of the statement's attachment. */
  public Map<String, BigFraction> customer(String body, String customer) {
    return CustomerNumbers.of(world, body, customer);
  }

  /** The picture on the statements of a body. */
  public List<Line> picture(String body) {
    return Picture.of(world.yields.get(body));
  }

  /** The figures of every batch by its id: {@code meat_in}, {@code added}, {@code out}, losses. */
  public Map<String, Map<String, BigFraction>> batches() {
    return world.batches.values().stream()
        .collect(Collectors.toMap(b -> b.id, ExactNight::batch, (a, b) -> a, TreeMap::new));
  }

  private static Map<String, BigFraction> batch(BatchFigures batch) {
    var numbers = new TreeMap<String, BigFraction>();
    numbers.put("meat_in", batch.meat);
    numbers.put("added", batch.added);
    numbers.put("out", batch.out);
    if (!batch.open) {
      numbers.put("loss", batch.loss);
    }
    if (batch.lossPercent != null) {
      numbers.put("loss_pct", batch.lossPercent);
    }
    return numbers;
  }

  /** A body's part of each of its finished batches, by the batch's id. */
  public Map<String, BigFraction> batchParts(String body) {
    return world.yields.get(body).batches.stream()
        .filter(batch -> !batch.open)
        .collect(Collectors.toMap(b -> b.id, b -> b.part(body), (a, b) -> a, TreeMap::new));
  }

  /** How many bodies put meat into each batch of a body; meat of no body counts as one. */
  public Map<String, Integer> batchBodies(String body) {
    return world.yields.get(body).batches.stream()
        .collect(Collectors.toMap(b -> b.id, b -> sources(b.id), (a, b) -> a, TreeMap::new));
  }

  private int sources(String batch) {
    return (int)
        world.exports.rows.stream()
            .filter(r -> r.counts() && r.is("tub") && r.batch.equals(batch))
            .map(r -> r.body == null ? "" : r.body.id())
            .distinct()
            .count();
  }

  /** A number rounded half away from zero. */
  public static BigDecimal round(BigFraction value, int decimals) {
    return Num.round(value, decimals);
  }

  /** The middle half and median: first quartile, median, third quartile. */
  static List<BigFraction> quartiles(List<BigFraction> values) {
    var sorted = values.stream().sorted().toList();
    var found = new ArrayList<BigFraction>();
    for (int quarter = 1; quarter <= 3; quarter++) {
      int position = (sorted.size() - 1) * quarter;
      var low = sorted.get(position / 4);
      var high = sorted.get(Math.min(position / 4 + 1, sorted.size() - 1));
      found.add(low.add(high.subtract(low).multiply(position % 4).divide(4)));
    }
    return found;
  }
}
