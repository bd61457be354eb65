package gambrel.laws;

import gambrel.files.folder.ForeignMake;
import gambrel.trade.rows.Field;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes a shop's exports anew, each file as another make of scale would, with its layout. */
public final class ForeignExports {
  private static final Set<String> WEIGHTS = Set.of("net", "gross", "tare");

  /** What a make may show instead: the unit and how many of it make one. */
  private static final Map<String, String> FINER = Map.of("kg", "g", "lb", "oz");

  private static final Map<String, BigDecimal> MAKE_ONE =
      Map.of("kg", new BigDecimal(1000), "lb", new BigDecimal(16));

  private ForeignExports() {}

  /**
   * Writes all exports of {@code shop} in foreign ways; of its rows only {@link #isPlain} remain.
   */
  public static void write(LawShop shop, SplittableRandom random) {
    var units = unitsShown(shop, random);
    int number = 0;
    for (var export : shop.exports().entrySet()) {
      var file = export.getValue().where(ForeignExports::isPlain);
      var codes = new TreeSet<String>();
      file.rows().forEach(row -> codes.add(row.getOrDefault("code", "")));
      codes.remove("");
      var make = new ForeignMake(random, codes);
      var folder = String.format("exports/make%03d/", number++);
      shop.remove(export.getKey());
      shop.write(folder + "layout.properties", make.layout());
      var rows = file.rows().stream().map(row -> foreign(row, units)).toList();
      bytes(shop, folder + "export.csv", make.export(rows));
    }
  }

  private static void bytes(LawShop shop, String path, byte[] bytes) {
    try {
      Files.write(shop.folder().resolve(path), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a layout can write a row: a layout's pattern has no offset, and nothing but times. */
  static boolean isPlain(Map<String, String> row) {
    return row.getOrDefault("time", "").matches("\\d{4}(-\\d\\d){2}T(\\d\\d:){2}\\d\\d");
  }

  /** Each scale's unit, and for some the finer one that its exports show instead. */
  private static Map<String, List<String>> unitsShown(LawShop shop, SplittableRandom random) {
    var own = shop.night().table("bodies.csv").columns().contains("hot_lb") ? "lb" : "kg";
    var units = new TreeMap<String, List<String>>();
    for (var scale : shop.file("scales.csv").rows()) {
      var unit = scale.get("unit").isEmpty() ? own : scale.get("unit");
      units.put(scale.get("scale"), List.of(unit, random.nextBoolean() ? unit : FINER.get(unit)));
    }
    return units;
  }

  private static Map<Field, String> foreign(
      Map<String, String> row, Map<String, List<String>> units) {
    var cells = new EnumMap<Field, String>(Field.class);
    var known = units.getOrDefault(row.get("scale"), List.of("", ""));
    var given = row.getOrDefault("unit", "");
    var unit = given.isEmpty() ? known.get(0) : given;
    boolean finer = unit.equals(known.get(0)) && !known.get(1).equals(unit);
    for (var cell : row.entrySet()) {
      Field.of(cell.getKey())
          .filter(field -> !cell.getValue().isEmpty())
          .ifPresent(
              field ->
                  cells.put(
                      field,
                      finer && WEIGHTS.contains(cell.getKey())
                          ? times(cell.getValue(), MAKE_ONE.get(unit))
                          : cell.getValue()));
    }
    if (!unit.isEmpty()) {
      cells.put(Field.UNIT, finer ? known.get(1) : unit);
    }
    return cells;
  }

  private static String times(String number, BigDecimal factor) {
    return new BigDecimal(number).multiply(factor).stripTrailingZeros().toPlainString();
  }
}
