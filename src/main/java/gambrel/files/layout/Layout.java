package gambrel.files.layout;

import gambrel.files.csv.Header;
import gambrel.files.csv.NameComparison;
import gambrel.files.csv.TextForm;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The description of one make of export. A column has the id of a field, or is {@code date}, {@code
 * clock}, {@code barcode}, {@code ounces} or {@code voids}.
 *
 * @param place the file of the layout, if any
 * @param text the form of the file
 * @param named header text or number from 1 by column; blank for a column that is not read
 * @param own columns that the header may also name by their ids
 * @param needed groups of columns; a file must have one column of each
 * @param reach groups of columns; a row must not end before the first column of each that the file
 *     has
 * @param elsewhere columns whose values come from constants, from lines above the rows or from the
 *     folder's name
 * @param unit the unit of rows that name none, if the layout gives it
 * @param negativesVoid whether a weight below zero cancels the row with that weight before it
 * @param voided what a void row cancels; empty if the layout does not say, which means its own
 *     ticket
 * @param dateInName finds the date in a file's path for rows without a date, if the layout takes it
 *     from there
 * @param headerRepeated whether a line like the header is no row
 * @param translation makes a row of stripped texts by column, without blank ones
 */
public record Layout(
    Place place,
    TextForm text,
    Map<String, String> named,
    Set<String> own,
    List<List<String>> needed,
    List<List<String>> reach,
    Set<String> elsewhere,
    Optional<WeightUnit> unit,
    boolean negativesVoid,
    Optional<Voided> voided,
    Function<String, Optional<String>> dateInName,
    boolean headerRepeated,
    Function<Map<String, String>, TranslatedRow> translation) {
  static final String DATE = "date";
  static final String CLOCK = "clock";

  /** The ounces of weights whose pounds stand in another column. */
  public static final String OUNCES = "ounces";

  /** The ticket that a row cancels. */
  public static final String VOIDS = "voids";

  /** The column of a barcode. */
  public static final String BARCODE = "barcode";

  private static final int LAST_BLANKS = 2;

  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}");

  private static final Pattern DIGITS = Pattern.compile("\\d+");

  /** A date of this century in the name of a file. */
  private static final Pattern IN_NAME =
      Pattern.compile("(?<!\\d)(20\\d{2})[-_.]?(\\d{2})[-_.]?(\\d{2})(?!\\d)");

  private static final Set<String> FIELDS =
      Stream.of(Field.values()).map(Field::id).collect(Collectors.toUnmodifiableSet());

  /** All columns that a layout may name. */
  static final Set<String> ALL =
      Stream.concat(FIELDS.stream(), Stream.of(DATE, CLOCK, BARCODE, OUNCES, VOIDS))
          .collect(Collectors.toUnmodifiableSet());

  private static final List<List<String>> PLAIN_NEEDS =
      groups("scale", "ticket", "time", "body", "code", "net gross");

  /** An export that needs no description: a header line with the fields' own names. */
  public static final Layout PLAIN =
      new Layout(
          Place.NONE,
          TextForm.PLAIN,
          Map.of(),
          FIELDS,
          PLAIN_NEEDS,
          PLAIN_NEEDS,
          Set.of(),
          Optional.empty(),
          false,
          Optional.empty(),
          path -> Optional.empty(),
          false,
          TranslatedRow::new);

  /** Copies the collections. */
  public Layout {
    named = Map.copyOf(named);
    own = Set.copyOf(own);
    needed = List.copyOf(needed);
    reach = List.copyOf(reach);
    elsewhere = Set.copyOf(elsewhere);
  }

  /** Groups of columns; each argument holds one group with blanks between its columns. */
  static List<List<String>> groups(String... groups) {
    return Stream.of(groups).map(group -> List.of(group.split(" "))).toList();
  }

  /** What a void row cancels. */
  public enum Voided implements FileWord {
    /** The nearest equal row before it. */
    BEFORE,
    /** The row just before it, whatever stands there. */
    LAST,
    /** Its own ticket. */
    OWN
  }

  /** Whether the layout says that a void row cancels this. */
  public boolean voids(Voided what) {
    return voided.equals(Optional.of(what));
  }

  /** Whether a column is given by its number. */
  public static boolean isNumber(String reference) {
    return NUMBER.matcher(reference).matches();
  }

  /** The ISO date in the name of a file, which is its year, month and day; else empty. */
  public static Optional<String> dateIn(String path) {
    var found = IN_NAME.matcher(path.substring(path.lastIndexOf('/') + 1));
    return found.find()
        ? Optional.of(found.group(1) + '-' + found.group(2) + '-' + found.group(3))
        : Optional.empty();
  }

  /** The first part of a file's name, between digits of other parts, that is of a pattern. */
  public static Optional<String> dateIn(String path, TimePattern pattern) {
    String name = path.substring(path.lastIndexOf('/') + 1);
    var starts = DIGITS.matcher(name).results().map(MatchResult::start).toList();
    var ends = DIGITS.matcher(name).results().map(MatchResult::end).toList();
    return starts.stream()
        .flatMap(from -> ends.stream().filter(to -> to > from).map(to -> name.substring(from, to)))
        .filter(text -> pattern.read(text, LocalDate::from).isPresent())
        .findFirst();
  }

  /** The names of a header whose columns the layout does not give, compared with the fields. */
  public NameComparison comparison(Header header) {
    return new NameComparison(header.names(), own.stream().sorted().toList());
  }

  /** Whether the layout gives no column, so that the names of a header are compared. */
  public boolean areCompared() {
    return named.isEmpty();
  }

  /** Whether the layout gives columns, all by their numbers. */
  public boolean areNumbers() {
    return !named.isEmpty()
        && named.values().stream().allMatch(text -> text.isEmpty() || isNumber(text));
  }

  /**
   * The index of each column in a file with this header. Where blanks part cells, its first line
   * may lack up to {@link #LAST_BLANKS} last cells that a row can do without.
   */
  public Map<String, Integer> positions(Header header) {
    if (areCompared()) {
      return comparison(header).positions();
    }
    var byName = header.positions();
    var positions = new HashMap<String, Integer>();
    named.forEach(
        (column, reference) ->
            position(reference, width(column, header), byName)
                .ifPresent(position -> positions.put(column, position)));
    var claimed = Set.copyOf(positions.values());
    for (String column : own) {
      var position = byName.get(column);
      if (!named.containsKey(column) && position != null && !claimed.contains(position)) {
        positions.put(column, position);
      }
    }
    return positions;
  }

  /** The number of cells among which a column may be that is given by its number. */
  private int width(String column, Header header) {
    boolean mayBeBlank =
        TextForm.isOfBlanks(header.delimiter())
            && reach.stream().noneMatch(group -> group.contains(column));
    return header.width() + (mayBeBlank ? LAST_BLANKS : 0);
  }

  private static Optional<Integer> position(
      String reference, int width, Map<String, Integer> byName) {
    if (reference.isEmpty()) {
      return Optional.empty();
    }
    return isNumber(reference)
        ? Optional.of(Integer.parseInt(reference) - 1).filter(at -> at >= 0 && at < width)
        : Optional.ofNullable(byName.get(Header.name(reference)));
  }

  /** The texts or numbers of the named columns that are not among {@code present}. */
  private List<String> missing(Collection<String> present) {
    return named.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty() && !present.contains(entry.getKey()))
        .sorted(Map.Entry.comparingByKey())
        .map(Map.Entry::getValue)
        .toList();
  }

  /** The header texts that name columns. */
  public List<String> texts() {
    return ALL.stream()
        .map(column -> named.getOrDefault(column, own.contains(column) ? column : ""))
        .filter(text -> !text.isEmpty() && !isNumber(text))
        .map(Header::name)
        .sorted()
        .toList();
  }

  /** The columns that a file must have and that are not among {@code present}. */
  public List<String> lacking(Collection<String> present) {
    var lacking = new ArrayList<>(missing(present));
    for (var group : needed) {
      boolean given =
          group.stream()
              .anyMatch(
                  column ->
                      present.contains(column)
                          || elsewhere.contains(column)
                          || !named.getOrDefault(column, "").isEmpty());
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
