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
 * @param gaveUp the line on which the expression of lines to ignore took too many steps; from there
 *     on none was ignored
 */
public record CountedLines(List<TextLine> lines, OptionalInt gaveUp) {
  /** Totals and page heads are short; what is longer is never ignored. */
  private static final int LONGEST_IGNORED = 1000;

  private static final int MOST_STEPS = 5_000_000;

  /** Reads a file. */
  public static CountedLines read(InputStream in, TextForm form) throws IOException {
    var all = lines(in, form.charset());
    var rest = all.subList(Math.min(form.skip(), all.size()), all.size());
    return form.ignore()
        .map(expression -> without(expression, rest))
        .orElseGet(() -> new CountedLines(rest, OptionalInt.empty()));
  }

  /** All lines of a file; a byte order mark outweighs what the layout says. */
  private static List<TextLine> lines(InputStream in, Charset charset) throws IOException {
    var buffered = new BufferedInputStream(in);
    buffered.mark(3);
    var begin = buffered.readNBytes(3);
    buffered.reset();
    return TextLine.read(buffered, marked(begin, charset));
  }

  private static Charset marked(byte[] begin, Charset otherwise) {
    if (begins(begin, 0xEF, 0xBB, 0xBF)) {
      return StandardCharsets.UTF_8;
    }
    return begins(begin, 0xFF, 0xFE) || begins(begin, 0xFE, 0xFF)
        ? StandardCharsets.UTF_16
        : otherwise;
  }

  private static boolean begins(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static CountedLines without(Pattern expression, List<TextLine> lines) {
    var counted = new ArrayList<TextLine>();
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      try {
        if (line.overlong()
            || line.text().length() > LONGEST_IGNORED
            || !expression.matcher(new PatientText(line.text())).find()) {
          counted.add(line);
        }
      } catch (OutOfPatience e) {
        counted.addAll(lines.subList(i, lines.size()));
        return new CountedLines(counted, OptionalInt.of(line.number()));
      }
    }
    return new CountedLines(counted, OptionalInt.empty());
  }

  /** The expression has looked at too many characters. */
  private static final class OutOfPatience extends RuntimeException {
    private OutOfPatience() {
      super(null, null, false, false);
    }
  }

  /**
   * A text that a regular expression may look at only so often: some expressions need more steps
   * than there is time. Steps are counted rather than seconds, so that every machine decides alike.
   */
  private static final class PatientText implements CharSequence {
    private final String text;
    private int steps;

    private PatientText(String text) {
      this.text = text;
    }

    @Override
    public char charAt(int index) {
      if (++steps > MOST_STEPS) {
        throw new OutOfPatience();
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
