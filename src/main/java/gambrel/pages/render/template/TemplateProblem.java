package gambrel.pages.render.template;

import java.util.Optional;

/**
 * A page that cannot be made because of its template, told in words for whoever edits templates.
 *
 * <p>The message names the template and, where known, line and column.
 */
public final class TemplateProblem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String template;
  private final int line;
  private final int column;
  private final String missing;
  private final String what;

  private TemplateProblem(
      String template, int line, int column, String missing, String what, Throwable cause) {
    super(place(template, line, column) + ": " + what, cause);
    this.template = template;
    this.line = line;
    this.column = column;
    this.missing = missing;
    this.what = what;
  }

  static TemplateProblem at(String template, int line, int column, String what, Throwable cause) {
    return new TemplateProblem(template, line, column, null, what, cause);
  }

  public static TemplateProblem of(String template, String what) {
    return new TemplateProblem(template, 0, 0, null, what, null);
  }

  /** Something is wrong with a file as a whole: {@code what}, as the end of a sentence. */
  public static TemplateProblem of(String template, String what, Throwable cause) {
    return new TemplateProblem(template, 0, 0, null, what, cause);
  }

  static TemplateProblem missingName(
      String template, int line, int column, String name, Throwable cause) {
    var what = "there is no \"" + name + "\" for this page";
    return new TemplateProblem(template, line, column, name, what, cause);
  }

  public static TemplateProblem missingFile(String asking, String file) {
    return new TemplateProblem(
        asking, 0, 0, file, "there is no file \"" + file + "\" among the templates", null);
  }

  /** What is wrong, without its place: the page engine's own message in English. */
  public String what() {
    return what;
  }

  /** The file to look into, as the templates folder names it. */
  public String template() {
    return template;
  }

  /** Line in {@link #template()}, from 1; 0 where not known. */
  public int line() {
    return line;
  }

  /** Column in {@link #template()}, from 1; 0 where not known. */
  public int column() {
    return column;
  }

  /**
   * The name or file that the template asks for and that does not exist, if that is what is wrong.
   */
  public Optional<String> missing() {
    return Optional.ofNullable(missing);
  }

  private static String place(String template, int line, int column) {
    return line < 1 ? template : template + ", line " + line + ", column " + column;
  }
}
