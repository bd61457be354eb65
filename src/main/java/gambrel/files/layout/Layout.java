package gambrel.files.layout;

import gambrel.files.csv.TextForm;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How one make of export is read.
 *
 * @param place the file that says so, if any
 * @param text how the file is written
 * @param columns where its columns are
 * @param needed for each thing that a file must tell, the columns that can tell it
 * @param reach for each thing, the columns of which a row must not end before the first that the
 *     file has
 * @param elsewhere columns whose values come from elsewhere: constants, the folder's scale
 * @param unit the unit of rows that name none, if the layout knows it
 * @param translation what makes fields of cells
 */
public record Layout(
    Place place,
    TextForm text,
    LayoutColumns columns,
    List<List<String>> needed,
    List<List<String>> reach,
    Set<String> elsewhere,
    Optional<WeightUnit> unit,
    RowTranslation translation) {

  private static final List<List<String>> PLAIN_NEEDS =
      List.of(
          List.of(Field.SCALE.id()),
          List.of(Field.TICKET.id()),
          List.of(Field.TIME.id()),
          List.of(Field.BODY.id()),
          List.of(Field.CODE.id()),
          List.of(Field.NET.id(), Field.GROSS.id()));

  /** An export that needs no description: a header line with the fields' own names. */
  static final Layout PLAIN =
      new Layout(
          Place.NONE,
          TextForm.PLAIN,
          LayoutColumns.PLAIN,
          PLAIN_NEEDS,
          PLAIN_NEEDS,
          Set.of(),
          Optional.empty(),
          RowTranslation.PLAIN);

  public Layout {
    needed = List.copyOf(needed);
    reach = List.copyOf(reach);
    elsewhere = Set.copyOf(elsewhere);
  }

  /** The columns without which a file does not fit, that are not among {@code present}. */
  public List<String> lacking(Collection<String> present) {
    var lacking = new ArrayList<>(columns.missing(present));
    var told = new HashSet<>(present);
    told.addAll(elsewhere);
    for (var ways : needed) {
      boolean explicit = ways.stream().anyMatch(this::isNamed);
      if (!explicit && ways.stream().noneMatch(told::contains)) {
        lacking.add(ways.get(0));
      }
    }
    return lacking;
  }

  private boolean isNamed(String column) {
    return !columns.named().getOrDefault(column, "").isEmpty();
  }

  /** How many cells a row must have, where columns stand so. */
  public int fewest(Map<String, Integer> positions) {
    int last = -1;
    for (var ways : reach) {
      var first = ways.stream().filter(positions::containsKey).findFirst();
      last = Math.max(last, first.map(positions::get).orElse(-1));
    }
    return last + 1;
  }
}
