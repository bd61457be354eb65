package gambrel.files.export;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/**
 * The lines of an export that may be rows: without those that its layout skips or ignores, or that
 * give a value to the rows below.
 *
 * @param lines in file order; each keeps its number in the file
 * @param above by line number the columns that lines give to the rows below them, from this line on
 * @param emptied the first line of the file that holds a block of NUL characters, as a crash leaves
 *     them in a file
 * @param gaveUp the line on which the expression of lines to ignore took too many steps; this line
 *     and those after it are all kept
 */
public record CountedLines(
    List<TextLine> lines,
    NavigableMap<Integer, Map<String, String>> above,
    Optional<Integer> emptied,
    OptionalInt gaveUp) {
  private static final String NUL_BLOCK = "\0\0";

  /** Totals and page heads are short; longer lines are never ignored. */
  private static final int LONGEST_IGNORED = 1000;

  private static final int MOST_STEPS = 5_000_000;

  /** Each of these marks overrules the character set of the layout. */
  private static final ByteOrderMark[] MARKS = {
    ByteOrderMark.UTF_8, ByteOrderMark.UTF_16BE, ByteOrderMark.UTF_16LE
  };

  /** Reads a file. */
  public static CountedLines read(InputStream in, TextForm form) throws IOException {
    var marked = BOMInputStream.builder().setInputStream(in).setByteOrderMarks(MARKS).get();
    var charset = marked.hasBOM() ? Charset.forName(marked.getBOMCharsetName()) : form.charset();
    return of(TextLine.read(marked, charset), form);
  }

  /** Those of all lines of a file. */
  public static CountedLines of(List<TextLine> all, TextForm form) {
    var rest = all.stream().dropWhile(line -> line.number() <= form.skip()).toList();
    var emptied =
        all.stream()
            .filter(line -> line.text().contains(NUL_BLOCK))
            .map(TextLine::number)
            .findFirst();
    return form.ignore().isEmpty() && form.above().isEmpty()
        ? new CountedLines(rest, new TreeMap<>(), emptied, OptionalInt.empty())
        : counted(form, all, emptied);
  }

  private static CountedLines counted(
      TextForm form, List<TextLine> lines, Optional<Integer> emptied) {
    var counted = new ArrayList<TextLine>();
    var above = new TreeMap<Integer, Map<String, String>>();
    var given = new HashMap<String, String>();
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      try {
        boolean overlong = line.text().length() > LONGEST_IGNORED || line.overlong();
        if (overlong && line.number() > form.skip()) {
          counted.add(line);
        } else if (!overlong && gives(form.above(), line.text(), given)) {
          above.put(line.number(), Map.copyOf(given));
        } else if (!overlong
            && line.number() > form.skip()
            && form.ignore().filter(e -> finds(e, line.text()).find()).isEmpty()) {
          counted.add(line);
        }
      } catch (TooManySteps e) {
        lines.stream().skip(i).filter(l -> l.number() > form.skip()).forEach(counted::add);
        return new CountedLines(counted, above, emptied, OptionalInt.of(line.number()));
      }
    }
    return new CountedLines(counted, above, emptied, OptionalInt.empty());
  }

  private static Matcher finds(Pattern expression, String text) {
    return expression.matcher(new MeteredText(text));
  }

  /** Whether a line gives columns their values in the rows below; puts them into {@code given}. */
  private static boolean gives(Map<String, Pattern> above, String text, Map<String, String> given) {
    boolean gives = false;
    for (var column : above.entrySet()) {
      var found = finds(column.getValue(), text);
      if (found.find()) {
        String value = found.group(Math.min(1, found.groupCount()));
        given.put(column.getKey(), value == null ? "" : value.strip());
        gives = true;
      }
    }
    return gives;
  }

  /** What lines above a line give to its columns. */
  Map<String, String> above(int line) {
    return Optional.ofNullable(above.floorEntry(line)).map(Map.Entry::getValue).orElse(Map.of());
  }

  /** The expression has read too many characters. */
  private static final class TooManySteps extends RuntimeException {
    private TooManySteps() {
      super(null, null, false, false);
    }
  }

  /**
   * A text that lets a regular expression read only so many characters: some expressions need more
   * steps than there is time. Steps are counted, not seconds, so that every machine decides alike.
   */
  private static final class MeteredText implements CharSequence {
    private final String text;
    private int steps;

    private MeteredText(String text) {
      this.text = text;
    }

    @Override
    public char charAt(int index) {
      if (++steps > MOST_STEPS) {
        throw new TooManySteps();
      }
      return text.charAt(index);
    }

    @Override
    public int length() {
      return text.length();
    }

    @Override
    public CharSequence subSequence(int start, int end) {
      return text.subSequence(start, end);
    }

    @Override
    public String toString() {
      return text;
    }
  }
}
