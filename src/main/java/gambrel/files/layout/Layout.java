package gambrel.files.layout;

import gambrel.files.csv.TextForm;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The description of one make of export.
 *
 * @param place the file of the layout, if any
 * @param text the form of the file
 * @param columns the places of its columns
 * @param needed groups of columns; a file must have one column of each
 * @param reach groups of columns; a row must not end before the first column of each that the file
 *     has
 * @param elsewhere columns whose values come from constants or from the folder's name
 * @param unit the unit of rows that name none, if the layout gives it
 * @param negativesVoid whether a weight below zero cancels the row with that weight before it
 * @param dateInName whether rows without a date are of the date in the file's name
 * @param headerRepeated whether a line like the header is no row
 * @param translation makes a row of stripped texts by column, without blank ones; empty if the
 *     columns are the fields
 */
public record Layout(
    Place place,
    TextForm text,
    LayoutColumns columns,
    List<List<String>> needed,
    List<List<String>> reach,
    Set<String> elsewhere,
    Optional<WeightUnit> unit,
    boolean negativesVoid,
    boolean dateInName,
    boolean headerRepeated,
    Optional<Function<Map<String, String>, TranslatedRow>> translation) {

  private static final List<List<String>> PLAIN_NEEDS =
      groups("scale", "ticket", "time", "body", "code", "net gross");

  /** An export that needs no description: a header line with the fields' own names. */
  public static final Layout PLAIN =
      new Layout(
          Place.NONE,
          TextForm.PLAIN,
          LayoutColumns.PLAIN,
          PLAIN_NEEDS,
          PLAIN_NEEDS,
          Set.of(),
          Optional.empty(),
          false,
          false,
          false,
          Optional.empty());

  /** Copies the lists. */
  public Layout {
    needed = List.copyOf(needed);
    reach = List.copyOf(reach);
    elsewhere = Set.copyOf(elsewhere);
  }

  /** Groups of columns; each argument holds one group with blanks between its columns. */
  static List<List<String>> groups(String... groups) {
    return Stream.of(groups).map(group -> List.of(group.split(" "))).toList();
  }

  /** The columns that a file must have and that are not among {@code present}. */
  public List<String> lacking(Collection<String> present) {
    var lacking = new ArrayList<>(columns.missing(present));
    for (var group : needed) {
      boolean given =
          group.stream()
              .anyMatch(
                  column ->
                      present.contains(column)
                          || elsewhere.contains(column)
                          || !columns.named().getOrDefault(column, "").isEmpty());
      if (!given) {
        lacking.add(group.get(0));
      }
    }
    return lacking;
  }

  /** The fewest cells of a row if the columns have these indexes. */
  public int fewest(Map<String, Integer> positions) {
    return reach.stream()
        .flatMap(group -> group.stream().filter(positions::containsKey).limit(1))
        .mapToInt(column -> positions.get(column) + 1)
        .max()
        .orElse(0);
  }
}
