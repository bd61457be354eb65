package gambrel.intake;

import gambrel.measure.WeightUnit;
import gambrel.weighing.Field;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one make of export is read.
 *
 * @param delimiters what may stand between cells; the header decides
 * @param charset the files' character set
 * @param columns the header text of each field, in lower case
 * @param required the fields without which a row means nothing; gross may stand in for net
 * @param unit the unit of rows that name none, if the layout knows it
 */
record Layout(
    List<Character> delimiters,
    Charset charset,
    Map<Field, String> columns,
    List<Field> required,
    Optional<WeightUnit> unit) {

  /** An export that needs no description: a header line with the fields' own names. */
  static final Layout PLAIN =
      new Layout(
          List.of(',', ';', '\t'),
          StandardCharsets.UTF_8,
          ownNames(),
          List.of(Field.SCALE, Field.TICKET, Field.TIME, Field.BODY, Field.CODE, Field.NET),
          Optional.empty());

  Layout {
    delimiters = List.copyOf(delimiters);
    columns = Map.copyOf(columns);
    required = List.copyOf(required);
  }

  private static Map<Field, String> ownNames() {
    var names = new EnumMap<Field, String>(Field.class);
    for (var field : Field.values()) {
      names.put(field, field.id());
    }
    return names;
  }

  /** Where each field stands in a file with this header. */
  Map<Field, Integer> positions(Header header) {
    var byName = header.positions();
    var positions = new EnumMap<Field, Integer>(Field.class);
    columns.forEach(
        (field, name) -> {
          if (byName.containsKey(name)) {
            positions.put(field, byName.get(name));
          }
        });
    return positions;
  }

  /** The required fields that are not among {@code present}. */
  List<Field> lacking(Collection<Field> present) {
    return required.stream()
        .filter(field -> !present.contains(field))
        .filter(field -> field != Field.NET || !present.contains(Field.GROSS))
        .toList();
  }
}
