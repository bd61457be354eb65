package gambrel.files.layout;

import gambrel.files.csv.Header;
import gambrel.trade.rows.Field;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where an export has its columns. Columns are known by the ids of fields, and by {@code date},
 * {@code clock} and {@code barcode}.
 *
 * @param named header text or number from 1 by column; blank for none
 * @param own columns that may also be found under their own ids
 */
public record LayoutColumns(Map<String, String> named, Set<String> own) {
  static final String DATE = "date";
  static final String CLOCK = "clock";
  public static final String BARCODE = "barcode";

  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}");

  private static final Set<String> FIELDS =
      Stream.of(Field.values()).map(Field::id).collect(Collectors.toUnmodifiableSet());

  private static final Set<String> ALL =
      Stream.concat(FIELDS.stream(), Stream.of(DATE, CLOCK, BARCODE))
          .collect(Collectors.toUnmodifiableSet());

  /** The fields under their own ids. */
  static final LayoutColumns PLAIN = new LayoutColumns(Map.of(), FIELDS);

  public LayoutColumns {
    named = Map.copyOf(named);
    own = Set.copyOf(own);
  }

  /** All columns that a layout may name. */
  static Set<String> all() {
    return ALL;
  }

  /** Whether a column is given by its number. */
  public static boolean isNumber(String reference) {
    return NUMBER.matcher(reference).matches();
  }

  /** Where each column stands in a file with this header. */
  public Map<String, Integer> positions(Header header) {
    var byName = header.positions();
    var positions = new HashMap<String, Integer>();
    named.forEach(
        (column, reference) -> {
          var position = position(reference, header.width(), byName);
          if (position != null) {
            positions.put(column, position);
          }
        });
    var claimed = Set.copyOf(positions.values());
    for (String column : own) {
      var position = byName.get(column);
      if (!named.containsKey(column) && position != null && !claimed.contains(position)) {
        positions.put(column, position);
      }
    }
    return positions;
  }

  private static Integer position(String reference, int width, Map<String, Integer> byName) {
    if (!isNumber(reference)) {
      return byName.get(Header.name(reference));
    }
    int number = Integer.parseInt(reference);
    return number >= 1 && number <= width ? Integer.valueOf(number - 1) : null;
  }

  /** The named columns that are not among {@code present}, as the layout names them. */
  List<String> missing(Collection<String> present) {
    return named.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty() && !present.contains(entry.getKey()))
        .sorted(Map.Entry.comparingByKey())
        .map(Map.Entry::getValue)
        .toList();
  }

  /** The header texts by which columns are found. */
  public List<String> texts() {
    return ALL.stream()
        .map(column -> named.getOrDefault(column, own.contains(column) ? column : ""))
        .filter(text -> !text.isEmpty() && !isNumber(text))
        .map(Header::name)
        .sorted()
        .toList();
  }
}
