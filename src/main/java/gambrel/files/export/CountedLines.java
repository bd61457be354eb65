package gambrel.files.export;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.apache.commons.io.ByteOrderMark;
import org.apache.commons.io.input.BOMInputStream;

/**
 * The lines of an export that may be rows: without those that its layout skips or ignores.
 *
 * @param lines in file order; each keeps its number in the file
 * @param emptied the first line of the file that holds a block of NUL characters, as a crash leaves
 *     them in a file
 * @param gaveUp the line on which the expression of lines to ignore took too many steps; this line
 *     and those after it are all kept
 */
public record CountedLines(List<TextLine> lines, Optional<Integer> emptied, OptionalInt gaveUp) {
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
    var all = TextLine.read(marked, charset);
    var rest = all.stream().dropWhile(line -> line.number() <= form.skip()).toList();
    var emptied =
        all.stream()
            .filter(line -> line.text().contains(NUL_BLOCK))
            .map(TextLine::number)
            .findFirst();
    return form.ignore()
        .map(expression -> without(expression, rest, emptied))
        .orElseGet(() -> new CountedLines(rest, emptied, OptionalInt.empty()));
  }

  private static CountedLines without(
      Pattern expression, List<TextLine> lines, Optional<Integer> emptied) {
    var counted = new ArrayList<TextLine>();
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      try {
        if (line.text().length() > LONGEST_IGNORED
            || line.overlong()
            || !expression.matcher(new MeteredText(line.text())).find()) {
          counted.add(line);
        }
      } catch (TooManySteps e) {
        counted.addAll(lines.subList(i, lines.size()));
        return new CountedLines(counted, emptied, OptionalInt.of(line.number()));
      }
    }
    return new CountedLines(counted, emptied, OptionalInt.empty());
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
