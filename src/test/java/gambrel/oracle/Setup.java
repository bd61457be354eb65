package gambrel.oracle;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** The shop folder's own files, read as they stand. */
final class Setup {
  final Path folder;
  final ZoneId zone;
  final String unit;
  final Map<String, Tree> trees = new LinkedHashMap<>();
  final Map<String, Set<String>> minced = new LinkedHashMap<>();
  final Map<String, Beast> bodies = new LinkedHashMap<>();
  final Columns columns = new Columns(this);
  final Set<String> customers = new HashSet<>(Set.of("shop"));
  final Map<String, ScaleInfo> scales = new LinkedHashMap<>();

  private final Properties settings = new Properties();
  private final Map<String, List<Csv.Line>> tables = new HashMap<>();
  private final Map<String, List<Csv.Line>> unread = new HashMap<>();

  Setup(Path folder, TreeSource source) {
    this.folder = folder;
    try (var reader = Files.newBufferedReader(folder.resolve("shop.properties"))) {
      settings.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    zone = ZoneId.of(setting("zone", ""));
    unit = setting("unit", "");
    source.species().forEach(s -> trees.put(s, new Tree(source.items(s))));
    source.species().forEach(s -> minced.put(s, source.minced(s)));
    Columns.tables().forEach(this::rows);
    for (var line : rows("bodies")) {
      if (!line.get("body").isEmpty() && trees.containsKey(line.get("species"))) {
        bodies.put(line.get("body"), Beast.of(line, this));
      }
    }
    for (var line : rows("customers")) {
      customers.add(line.get("customer"));
    }
    customers.remove("");
    for (var line : table("scales")) {
      scales.put(line.get("scale"), ScaleInfo.of(line, unit));
    }
  }

  List<Csv.Line> table(String name) {
    return rows(name).stream().filter(line -> !unread(name).contains(line)).toList();
  }

  /** Rows of a table that cannot be read. */
  List<Csv.Line> unread(String name) {
    return unread.computeIfAbsent(
        name,
        n ->
            Columns.knows(n)
                ? rows(n).stream().filter(l -> !columns.isLegible(n, l)).toList()
                : List.of());
  }

  /** All rows of a table. */
  List<Csv.Line> rows(String name) {
    var file = folder.resolve(name + ".csv");
    return tables.computeIfAbsent(
        name,
        n -> Columns.knows(n) ? Csv.read(file, header -> columns.read(n, header)) : Csv.read(file));
  }

  boolean isDate(String cell) {
    try {
      return date(cell) != null;
    } catch (DateTimeException e) {
      return false;
    }
  }

  String setting(String key, String otherwise) {
    var value = settings.getProperty(key, "").trim();
    return value.isEmpty() ? otherwise : value;
  }

  BigFraction number(String key, String otherwise) {
    return Num.of(setting(key, otherwise));
  }

  Duration quiet() {
    return Duration.ofMinutes(Num.steps(number("quiet_hours", "6").multiply(60), 0).longValue());
  }

  Duration cuttingDays() {
    return Duration.ofDays(Integer.parseInt(setting("cutting_days", "4")));
  }

  String bins() {
    return setting("bins", "weighed");
  }

  /** The rail weights that the shop takes of a species. */
  List<String> rail(String species) {
    return List.of(setting("rail." + species, setting("rail", "hot,cold")).split("\\s*,\\s*"));
  }

  int minorDigits() {
    return Currency.getInstance(setting("currency", "")).getDefaultFractionDigits();
  }

  /** An amount in minor units of the currency, as it is printed. */
  String money(BigInteger minor) {
    return new BigDecimal(minor, minorDigits()).toPlainString();
  }

  /** The number of a cell of a body's row; null where it cannot be read. */
  String legible(Csv.Line line, String column) {
    return columns.isLegible("bodies", line, column) ? line.get(column) : "";
  }

  LocalDate date(String cell) {
    if (cell.matches("\\d{4}-\\d\\d-\\d\\d")) {
      return LocalDate.parse(cell);
    }
    return LocalDate.parse(cell, strict(setting("dates", "yyyy-MM-dd")));
  }

  private static DateTimeFormatter strict(String pattern) {
    return DateTimeFormatter.ofPattern(pattern.replace('y', 'u'))
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** A moment in a cell of the shop folder; a date alone means 00:00. */
  Instant moment(String cell) {
    return cell.contains("T") ? time(cell) : date(cell).atStartOfDay(zone).toInstant();
  }

  /** ISO 8601: local unless it carries an offset. */
  Instant time(String text) {
    return text.matches(".*T.*(Z|[+-]\\d\\d:?\\d\\d)")
        ? OffsetDateTime.parse(text).toInstant()
        : LocalDateTime.parse(text).atZone(zone).toInstant();
  }

  LocalDate localDate(Instant time) {
    return time.atZone(zone).toLocalDate();
  }
}
