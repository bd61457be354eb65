package gambrel.pages.render.template;

import java.util.Map;
import java.util.TreeMap;

/**
 * A page that cannot be made because of its template. It carries a fault and named values; the
 * caller puts them into words.
 */
public final class TemplateProblem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** What is wrong, with the names of the values that say more. */
  public enum Fault {
    /** The template names something that the page does not have: {@code name}. */
    NO_NAME,
    /** The template asks for a file that is not among the templates: {@code file}. */
    NO_FILE,
    /** The template language refuses the template: its {@code message}, in English. */
    LANGUAGE,
    /** The words of a language cannot be used: {@code message}, in English. */
    WORDS,
    /** The file is not saved as UTF-8. */
    NOT_UTF8,
    /** The template asks for the machine's clock. */
    CLOCK,
    /** The page asks for something outside the templates folder: {@code address}. */
    OUTSIDE,
    /** The page brings a font: {@code address}. */
    FONT,
    /** A picture is in another format: {@code picture}. */
    NOT_PNG,
    /** A picture is damaged: {@code picture}. */
    PICTURE,
    /** The page is not well-formed: {@code line}, {@code column} and {@code text} of the page. */
    NOT_XHTML,
    /** The same, and it has a document type declaration, which is not read. */
    DOCTYPE,
    /** A drawing has an element that is not supported: {@code element}. */
    ELEMENT,
    /** A drawing has an element inside a text: {@code element}. */
    INSIDE_TEXT,
    /** A drawing has text outside a text element: {@code text}. */
    LOOSE_TEXT,
    /** A drawing has an attribute that is not supported: {@code element, attribute, value}. */
    ATTRIBUTE,
    /** The page took longer than its time limit: {@code seconds}. */
    TOO_SLOW,
    /** The page exceeds the size limit. */
    TOO_LONG,
    /** Elements or macros are nested too deep. */
    TOO_DEEP,
    /** The page needs more memory than Java has. */
    MEMORY,
    /** The layout engine failed: its {@code message}, in English. */
    LAYOUT
  }

  private final String template;
  private final int line;
  private final int column;
  private final Fault fault;
  private final TreeMap<String, String> values;

  /** A fault at a line and a column, both from 1. */
  TemplateProblem(
      String template,
      int line,
      int column,
      Fault fault,
      Map<String, String> values,
      Throwable cause) {
    super(template + ":" + line + ":" + column + " " + fault + " " + new TreeMap<>(values), cause);
    this.template = template;
    this.line = line;
    this.column = column;
    this.fault = fault;
    this.values = new TreeMap<>(values);
  }

  /** A fault of a file as a whole. */
  public static TemplateProblem of(String template, Fault fault, Map<String, String> values) {
    return new TemplateProblem(template, 0, 0, fault, values, null);
  }

  /** A fault of a file as a whole, found by a library. */
  public static TemplateProblem of(
      String template, Fault fault, Map<String, String> values, Throwable cause) {
    return new TemplateProblem(template, 0, 0, fault, values, cause);
  }

  /** The template {@code asking} uses a file that does not exist. */
  public static TemplateProblem missingFile(String asking, String file) {
    return of(asking, Fault.NO_FILE, Map.of("file", file));
  }

  /** The file with the fault, as the templates folder names it. */
  public String template() {
    return template;
  }

  /** Line in {@link #template()}, from 1; 0 if unknown. */
  public int line() {
    return line;
  }

  /** Column in {@link #template()}, from 1; 0 if unknown. */
  public int column() {
    return column;
  }

  /** What is wrong. */
  public Fault fault() {
    return fault;
  }

  /** The values of the fault by name. */
  public Map<String, String> values() {
    return Map.copyOf(values);
  }
}
