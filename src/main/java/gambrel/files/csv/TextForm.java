package gambrel.files.csv;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The form of a delimited file.
 *
 * @param delimiters the characters that may stand between cells; the first row decides
 * @param quote encloses cells; {@link #NO_QUOTE} if nothing does
 * @param charset its character set, unless it begins with a byte order mark
 * @param skip number of lines before the first that counts
 * @param header whether the first line holds the columns' names
 * @param ignore lines that contain a match do not count
 * @param above by column an expression: a line that contains a match does not count but gives the
 *     column its value in the rows below, the first group or else the match
 * @param decimal the mark before a number's decimals
 */
public record TextForm(
    List<Character> delimiters,
    char quote,
    Charset charset,
    int skip,
    boolean header,
    Optional<Pattern> ignore,
    Map<String, Pattern> above,
    char decimal) {
  /** The usual quote. */
  public static final char DOUBLE_QUOTE = '"';

  /** The quote of a file whose cells are never enclosed. */
  public static final char NO_QUOTE = '\0';

  /** Stands for two blanks or more between cells, as printed columns have them. */
  public static final char BLANKS = '\1';

  /** Stands for one blank or more between cells. */
  public static final char ANY_BLANKS = '\2';

  /** Stands for two blanks or more between cells, or one between two digits. */
  public static final char DIGIT_BLANKS = '\3';

  /** The delimiters that are tried if a layout names none. */
  public static final List<Character> USUAL_DELIMITERS = List.of(',', ';', '\t');

  /** Any usual delimiter, double quotes, UTF-8, the header on the first line. */
  public static final TextForm PLAIN =
      new TextForm(
          USUAL_DELIMITERS,
          DOUBLE_QUOTE,
          StandardCharsets.UTF_8,
          0,
          true,
          Optional.empty(),
          Map.of(),
          '.');

  /** Whether blanks part cells, so that last cells of a line may be printed as blanks. */
  public static boolean isOfBlanks(char delimiter) {
    return delimiter == BLANKS || delimiter == ANY_BLANKS || delimiter == DIGIT_BLANKS;
  }

  /** Copies the collections. */
  public TextForm {
    above = Map.copyOf(above);
    delimiters = List.copyOf(delimiters);
  }
}
