package gambrel.files.guess;

import gambrel.files.guess.GuessTable.Column;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A layout in the making.
 *
 * @param name the folder of the exports that it is for
 * @param sample the exports
 * @param table the exports as a table
 * @param fields the choices of columns by field
 * @param lines its lines, or those of a saved layout and what it is missing; none if the text has
 *     no columns
 * @param found what was found about the exports
 * @param questions what is open
 * @param withheld fields that stay out of the layout until a question is answered
 */
record LayoutDraft(
    String name,
    ExportSample sample,
    GuessTable table,
    Map<String, GuessFields.Choice> fields,
    List<String> lines,
    List<String> found,
    List<Question> questions,
    Set<String> withheld) {

  /**
   * What only a person can answer.
   *
   * @param asks the question
   * @param options the lines that each answer adds to the layout
   * @param row the index of a row that it is about
   */
  record Question(String asks, List<List<String>> options, int row) {
    /** Whether it asks which rows count. */
    boolean isOfStatus() {
      return options.stream()
          .flatMap(List::stream)
          .anyMatch(line -> line.matches("(value\\.status\\.|void=).*"));
    }

    /** Whether rows can be read, and read wrong, without an answer. */
    boolean isSilent() {
      return options.stream()
          .flatMap(List::stream)
          .anyMatch(
              line -> line.matches("column\\.(batch=.+|status=)|(void|ignore)[=.].*|unit=.*"));
    }
  }

  LayoutDraft(
      String name, ExportSample sample, GuessTable table, Map<String, GuessFields.Choice> fields) {
    this(
        name,
        sample,
        table,
        new HashMap<>(fields),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new HashSet<>());
  }

  /** Where it is to be saved, relative to the shop folder. */
  String path() {
    return "layouts/" + name + ".properties";
  }

  /** The row that a question is about, as it stands; empty if there are no rows. */
  Optional<GuessTable.Row> row(Question question) {
    return table.rows().stream().skip(question.row()).findFirst();
  }

  boolean has(String field) {
    return fields.containsKey(field);
  }

  Column column(String field) {
    return fields.get(field).column();
  }

  /** Why a column was taken for a field; empty if none was. */
  Optional<String> why(String field) {
    return Optional.ofNullable(fields.get(field)).map(GuessFields.Choice::reasons);
  }

  /** The cells of a field, row by row; none if no column is of that field. */
  List<String> cells(String field) {
    return has(field) ? column(field).cells() : List.of();
  }

  /** The day of a row as it is written. */
  String day(int row) {
    return cell("time", row).replaceFirst("[T ].*", "") + cell("date", row);
  }

  /** The cell of a field in a row; empty if no column is of that field. */
  String cell(String field, int row) {
    return has(field) ? column(field).cells().get(row) : "";
  }

  /** Takes a column for a field. */
  void choose(String field, Column column, String reason) {
    fields.put(field, new GuessFields.Choice(field, column, 0, reason));
  }

  /** The columns that are of no field. */
  List<Column> unused() {
    return table.columns().stream()
        .filter(column -> fields.values().stream().noneMatch(c -> c.column().equals(column)))
        .toList();
  }

  boolean isWithheld(String field) {
    return withheld.contains(field);
  }

  /** Keeps a field out without a word. */
  void leaveOut(String field) {
    withheld.add(field);
  }

  /** Keeps a column out, even under the field's own name, until a question is answered. */
  void withhold(String field) {
    withheld.add(field);
    lines.add("# Not read until a question is answered:");
    lines.add("column." + field + '=');
  }

  void add(String line) {
    lines.add(line);
  }

  void tell(String sentence) {
    found.add(sentence);
  }

  /** Adds a line and says why. */
  void setting(String reason, String line) {
    lines.add("# " + reason);
    lines.add(line);
  }

  /** Asks which of several lines, or groups of lines, is right. */
  void ask(String asks, List<List<String>> options) {
    ask(asks, options, 0);
  }

  /** As above, about a row. */
  void ask(String asks, List<List<String>> options, int row) {
    questions.add(new Question(onOneLine(asks), options, row));
  }

  /** Keeps each line on one line, whatever stands in the exports. */
  void finish() {
    lines.replaceAll(LayoutDraft::onOneLine);
    found.replaceAll(LayoutDraft::onOneLine);
  }

  private static String onOneLine(String text) {
    return text.replaceAll("\\p{Cntrl}+", " ");
  }

  /** The key of a line as the settings of a layout have it. */
  static String key(String line) {
    return line.split("(?<!\\\\)=", 2)[0].replace("\\", "");
  }

  /** A foreign text in the key of a layout. */
  static String escaped(String foreign) {
    return foreign
        .replace("\\", "\\\\")
        .replace("=", "\\=")
        .replace("#", "\\#")
        .replace("!", "\\!")
        .replace("*", "\\*");
  }
}
