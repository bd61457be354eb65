package gambrel.files.csv;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a delimited file is written.
 *
 * @param delimiters what may stand between cells; the first row decides
 * @param quote what encloses cells, {@link #NO_QUOTE} for nothing
 * @param charset its character set, unless it begins with a byte order mark
 * @param skip number of lines before the first that counts
 * @param header whether a line with the columns' names comes first
 * @param ignore lines in which this is found do not count
 */
public record TextForm(
    List<Character> delimiters,
    char quote,
    Charset charset,
    int skip,
    boolean header,
    Optional<Pattern> ignore) {
  public static final char DOUBLE_QUOTE = '"';
  public static final char NO_QUOTE = '\0';

  /** What may stand between cells where nothing says which. */
  public static final List<Character> USUAL_DELIMITERS = List.of(',', ';', '\t');

  /** Any usual delimiter, double quotes, UTF-8, the header on the first line. */
  public static final TextForm PLAIN =
      new TextForm(
          USUAL_DELIMITERS, DOUBLE_QUOTE, StandardCharsets.UTF_8, 0, true, Optional.empty());

  public TextForm {
    delimiters = List.copyOf(delimiters);
  }
}
