package gambrel.files.export;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * The lines of an export that may be rows: without those that its layout skips or ignores.
 *
 * @param lines in file order; each keeps its number in the file
 * @param gaveUp the line on which the expression of lines to ignore took too many steps; this line
 *     and those after it are all kept
 */
public record CountedLines(List<TextLine> lines, OptionalInt gaveUp) {
  /** Totals and page heads are short; longer lines are never ignored. */
  private static final int LONGEST_IGNORED = 1000;

  private static final int MOST_STEPS = 5_000_000;

  /** Reads a file. */
  public static CountedLines read(InputStream in, TextForm form) throws IOException {
    var buffered = new BufferedInputStream(in);
    buffered.mark(3);
    var charset = charset(buffered.readNBytes(3), form.charset());
    buffered.reset();
    var all = TextLine.read(buffered, charset);
    var rest = all.stream().dropWhile(line -> line.number() <= form.skip()).toList();
    return form.ignore()
        .map(expression -> without(expression, rest))
        .orElseGet(() -> new CountedLines(rest, OptionalInt.empty()));
  }

  /** The character set of a byte order mark, else {@code otherwise}. */
  private static Charset charset(byte[] begin, Charset otherwise) {
    int first = begin.length < 2 ? 0 : (begin[0] & 0xFF) << 8 | begin[1] & 0xFF;
    if (first == 0xFEFF || first == 0xFFFE) {
      return StandardCharsets.UTF_16;
    }
    return first == 0xEFBB && begin.length > 2 && (begin[2] & 0xFF) == 0xBF
        ? StandardCharsets.UTF_8
        : otherwise;
  }

  private static CountedLines without(Pattern expression, List<TextLine> lines) {
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
        return new CountedLines(counted, OptionalInt.of(line.number()));
      }
    }
    return new CountedLines(counted, OptionalInt.empty());
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
