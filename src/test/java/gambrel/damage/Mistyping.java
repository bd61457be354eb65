package gambrel.damage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** One slip of somebody who types a table, or of the spreadsheet that it is kept in. */
enum Mistyping {
  LETTER_FOR_DIGIT(Where.CELL),
  DIGIT_CHANGED(Where.CELL),
  DECIMAL_COMMA(Where.CELL),
  DECIMAL_POINT_LOST(Where.CELL),
  THOUSANDS(Where.CELL),
  UNIT_APPENDED(Where.CELL),
  DATE_IN_ANOTHER_ORDER(Where.CELL),
  THIRTY_FIRST_OF_JUNE(Where.CELL),
  LETTER_CHANGED(Where.CELL),
  LETTER_LOST(Where.CELL),
  LETTERS_EXCHANGED(Where.CELL),
  ANOTHER_VALUE_OF_THE_COLUMN(Where.CELL),
  UNKNOWN_VALUE(Where.CELL),
  BLANKED(Where.CELL),
  BLANK_WITHIN(Where.CELL),
  FILLED(Where.CELL),
  TURNED_BY_SPREADSHEET(Where.CELL),
  LETTER_IN_WINDOWS_1252(Where.CELL),
  ROW_DOUBLED(Where.ROW),
  ROW_MISSING(Where.ROW),
  ROW_CUT_SHORT(Where.ROW),
  EXTRA_CELL(Where.ROW),
  EXTRA_BLANK_CELL(Where.ROW),
  CELLS_SHIFTED(Where.ROW),
  SEMICOLONS(Where.FILE),
  WINDOWS_1252(Where.FILE),
  NAMES_EXCHANGED(Where.NAME),
  NAME_LETTER_CHANGED(Where.NAME),
  NAME_LETTER_LOST(Where.NAME),
  NAME_LETTER_ADDED(Where.NAME),
  NAME_LETTERS_EXCHANGED(Where.NAME),
  NAME_WITH_BLANK(Where.NAME),
  NAME_WITH_DASH(Where.NAME),
  NAME_IN_CAPITALS(Where.NAME),
  NAME_TWICE(Where.NAME);

  /** What a slip changes. */
  enum Where {
    CELL,
    ROW,
    FILE,
    NAME
  }

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d\\d)-(\\d\\d)(.*)");

  private final Where where;

  Mistyping(Where where) {
    this.where = where;
  }

  Where where() {
    return where;
  }

  /**
   * A table after this slip; empty where it cannot happen or changes nothing.
   *
   * @param row the row that it happens in; any for a name or the whole file
   * @param column the column that it happens in
   */
  Optional<Mistake> in(TypedTable table, int row, int column, SplittableRandom random) {
    var after =
        switch (where) {
          case CELL -> {
            var cell = table.cell(row, column);
            var typed = cell(cell, table, row, column, random);
            yield typed.equals(cell) ? table : table.withCell(row, column, typed);
          }
          case ROW -> row(table, row, column);
          case FILE -> file(table);
          case NAME -> name(table, row, column, random);
        };
    boolean any = after.delimiter() != table.delimiter() || !after.equals(table);
    return any ? Optional.of(new Mistake(this, table, after, row, column)) : Optional.empty();
  }

  private String cell(String cell, TypedTable table, int row, int column, SplittableRandom random) {
    var date = DATE.matcher(cell);
    boolean number = NUMBER.matcher(cell).matches();
    return switch (this) {
      case LETTER_FOR_DIGIT ->
          replaced(cell, places(cell, c -> "0158".indexOf(c) >= 0), random, Mistyping::lookalike);
      case DIGIT_CHANGED ->
          replaced(
              cell,
              places(cell, Character::isDigit),
              random,
              c -> (char) ('1' + (c - '0' + random.nextInt(8)) % 9));
      case DECIMAL_COMMA -> number ? cell.replace('.', ',') : cell;
      case DECIMAL_POINT_LOST -> number ? cell.replace(".", "") : cell;
      case THOUSANDS -> number ? thousands(cell) : cell;
      case UNIT_APPENDED ->
          number ? cell + List.of(" AUD", "$", " kg", "%").get(random.nextInt(4)) : cell;
      case DATE_IN_ANOTHER_ORDER ->
          !date.matches()
              ? cell
              : (random.nextBoolean()
                      ? date.group(3) + "/" + date.group(2) + "/" + date.group(1)
                      : date.group(1) + "-" + date.group(3) + "-" + date.group(2))
                  + date.group(4);
      case THIRTY_FIRST_OF_JUNE -> date.matches() ? date.group(1) + "-06-31" + date.group(4) : cell;
      case LETTER_CHANGED ->
          replaced(
              cell,
              places(cell, c -> c < 128 && Character.isLetter(c)),
              random,
              c -> (char) ((Character.isUpperCase(c) ? 'A' : 'a') + random.nextInt(26)));
      case LETTER_LOST, LETTERS_EXCHANGED -> letters(cell, random);
      case ANOTHER_VALUE_OF_THE_COLUMN -> another(table, column, cell, random);
      case UNKNOWN_VALUE -> "Qx7";
      case BLANKED -> "";
      case BLANK_WITHIN ->
          cell.length() < 2
              ? cell
              : new StringBuilder(cell)
                  .insert(1 + random.nextInt(cell.length() - 1), ' ')
                  .toString();
      case FILLED -> cell.isEmpty() ? neighbour(table, row, column) : cell;
      case TURNED_BY_SPREADSHEET -> cell.contains("/") ? "01-Feb" : "1.23E+14";
      case LETTER_IN_WINDOWS_1252 ->
          replaced(cell, places(cell, c -> true), random, c -> TypedTable.UNDECODABLE);
      default -> throw new IllegalStateException(name());
    };
  }

  private static List<Integer> places(String cell, java.util.function.IntPredicate fits) {
    return IntStream.range(0, cell.length())
        .filter(i -> fits.test(cell.charAt(i)))
        .boxed()
        .toList();
  }

  private static char lookalike(char digit) {
    return "OlSB".charAt("0158".indexOf(digit));
  }

  private static String replaced(
      String cell,
      List<Integer> places,
      SplittableRandom random,
      java.util.function.UnaryOperator<Character> other) {
    if (places.isEmpty()) {
      return cell;
    }
    int at = places.get(random.nextInt(places.size()));
    return cell.substring(0, at) + other.apply(cell.charAt(at)) + cell.substring(at + 1);
  }

  private static String thousands(String number) {
    int end = number.indexOf('.') < 0 ? number.length() : number.indexOf('.');
    int start = number.startsWith("-") ? 1 : 0;
    var whole = number.substring(start, end);
    var grouped =
        whole.length() > 3
            ? whole.substring(0, whole.length() - 3) + ',' + whole.substring(whole.length() - 3)
            : "1," + "0".repeat(3 - whole.length()) + whole;
    return number.substring(0, start) + grouped + number.substring(end);
  }

  /** A letter left out, or two neighbours exchanged. */
  private String letters(String text, SplittableRandom random) {
    if (text.length() < 2) {
      return text;
    }
    int at = random.nextInt(text.length() - 1);
    var rest = text.substring(at + 2);
    boolean lost = this == LETTER_LOST || this == NAME_LETTER_LOST;
    return text.substring(0, at) + text.charAt(at + 1) + (lost ? "" : text.charAt(at)) + rest;
  }

  private static String another(
      TypedTable table, int column, String cell, SplittableRandom random) {
    var others =
        IntStream.range(0, table.rows().size())
            .mapToObj(row -> table.cell(row, column))
            .filter(other -> !other.isEmpty() && !other.equals(cell))
            .distinct()
            .toList();
    return others.isEmpty() ? cell : others.get(random.nextInt(others.size()));
  }

  private static String neighbour(TypedTable table, int row, int column) {
    return IntStream.concat(
            IntStream.range(column + 1, table.rows().get(row).size()),
            IntStream.range(0, column).map(i -> column - 1 - i))
        .mapToObj(i -> table.cell(row, i))
        .filter(cell -> !cell.isEmpty())
        .findFirst()
        .orElse("");
  }

  private TypedTable row(TypedTable table, int row, int column) {
    var rows = new ArrayList<>(table.rows());
    var cells = new ArrayList<>(rows.get(row));
    switch (this) {
      case ROW_DOUBLED -> rows.add(row, rows.get(row));
      case ROW_MISSING -> rows.remove(row);
      case ROW_CUT_SHORT ->
          rows.set(row, cells.subList(0, Math.max(1, Math.min(column, cells.size()))));
      case EXTRA_CELL, EXTRA_BLANK_CELL -> {
        cells.add(this == EXTRA_CELL ? "x" : "");
        rows.set(row, cells);
      }
      case CELLS_SHIFTED -> {
        cells.add(Math.min(column, cells.size()), "");
        rows.set(row, cells);
      }
      default -> throw new IllegalStateException(name());
    }
    return table.settings() && this != ROW_DOUBLED && this != ROW_MISSING
        ? table
        : table.withRows(rows);
  }

  private TypedTable file(TypedTable table) {
    if (this == SEMICOLONS) {
      return table.settings() ? table : table.withDelimiter(';');
    }
    return table.withRows(
        table.rows().stream()
            .map(row -> row.stream().map(Mistyping::undecodable).toList())
            .toList());
  }

  private static String undecodable(String cell) {
    return cell.codePoints()
        .map(c -> c < 128 ? c : TypedTable.UNDECODABLE)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** The name of a column, or of the setting in a row. */
  private TypedTable name(TypedTable table, int row, int column, SplittableRandom random) {
    var names =
        new ArrayList<>(
            table.settings()
                ? table.rows().stream().map(setting -> setting.get(0)).toList()
                : table.header());
    int at = table.settings() ? row : column;
    int other = (at + 1 + random.nextInt(names.size() - 1)) % names.size();
    var name = names.get(at);
    switch (this) {
      case NAMES_EXCHANGED -> {
        names.set(at, names.get(other));
        names.set(other, name);
      }
      case NAME_TWICE -> names.set(at, names.get(other));
      default -> names.set(at, name(name, random));
    }
    if (!table.settings()) {
      return table.withHeader(names);
    }
    return table.withRows(
        IntStream.range(0, names.size())
            .mapToObj(i -> List.of(names.get(i), table.cell(i, 1)))
            .toList());
  }

  private String name(String name, SplittableRandom random) {
    int at = random.nextInt(name.length());
    var letter = (char) ('a' + random.nextInt(26));
    return switch (this) {
      case NAME_LETTER_CHANGED -> name.substring(0, at) + letter + name.substring(at + 1);
      case NAME_LETTER_ADDED -> name.substring(0, at) + letter + name.substring(at);
      case NAME_LETTER_LOST, NAME_LETTERS_EXCHANGED -> letters(name, random);
      case NAME_WITH_BLANK -> name.replaceFirst("(?<=.)_?(?=[^_])", " ");
      case NAME_WITH_DASH ->
          name.contains("_") ? name.replace('_', '-') : name.charAt(0) + "-" + name.substring(1);
      case NAME_IN_CAPITALS -> name.toUpperCase(Locale.ROOT);
      default -> throw new IllegalStateException(name());
    };
  }
}
