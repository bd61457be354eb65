package gambrel.files.guess;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import gambrel.files.export.CountedLines;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The beginnings of the exports in one folder.
 *
 * @param charset their character set
 * @param files in path order; blank ones are left out
 */
record ExportSample(Charset charset, List<SampleFile> files) {
  private static final int MOST_BYTES = 100_000;

  /** The character sets that are tried where a file is not UTF-8, the more usual first. */
  private static final List<String> OTHERS =
      List.of("windows-1252", "IBM850", "windows-1250", "windows-1251", "Shift_JIS");

  private static final int LAST_ASCII = 127;
  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final Pattern LATIN = Pattern.compile("\\p{IsLatin}+");
  private static final Pattern OTHER_SCRIPT =
      Pattern.compile(
          "\\p{IsCyrillic}+|\\p{IsGreek}+|[\\p{IsHan}\\p{IsHiragana}\\p{IsKatakana}ー&&[^\uff61-\uff9f]]+");

  /** The paths of the files. */
  List<String> paths() {
    return files.stream().map(SampleFile::path).toList();
  }

  /** The beginning of one export; {@code path} is relative to the shop folder. */
  record SampleFile(String path, List<TextLine> lines) {}

  /**
   * Reads the beginnings of exports.
   *
   * @param known their character set, if a layout says it
   */
  static ExportSample of(Path folder, List<String> paths, Optional<Charset> known)
      throws IOException {
    var contents = new ArrayList<byte[]>();
    for (String path : paths) {
      try (var in = Files.newInputStream(folder.resolve(path))) {
        contents.add(in.readNBytes(MOST_BYTES));
      }
    }
    var charset =
        Stream.concat(known.stream(), contents.stream().map(ExportSample::charset))
            .filter(found -> known.isPresent() || !found.equals(StandardCharsets.UTF_8))
            .findFirst()
            .orElse(StandardCharsets.UTF_8);
    var files = new ArrayList<SampleFile>();
    for (int i = 0; i < contents.size(); i++) {
      var lines = lines(contents.get(i), charset);
      if (!lines.stream().allMatch(TextLine::isBlank)) {
        files.add(new SampleFile(paths.get(i), lines));
      }
    }
    return new ExportSample(charset, files);
  }

  private static List<TextLine> lines(byte[] bytes, Charset charset) throws IOException {
    var form = new TextForm(List.of(), '"', charset, 0, true, Optional.empty(), Map.of(), '.');
    var all = CountedLines.read(new ByteArrayInputStream(bytes), form).lines();
    // If the file goes on, the last line is incomplete.
    boolean cut = bytes.length == MOST_BYTES && all.size() > 1;
    return all.subList(0, cut ? all.size() - 1 : all.size());
  }

  /**
   * UTF-16 if every other byte is zero, UTF-8 if it is, else the set by which its words look most
   * like words.
   */
  private static Charset charset(byte[] bytes) {
    int zeros = 0;
    int odd = 0;
    for (int i = 0; i < bytes.length; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
      odd += bytes[i] == 0 && i % 2 == 1 ? 1 : 0;
    }
    if (zeros * 3 > bytes.length) {
      return odd * 2 > zeros ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
    }
    return decoded(bytes, StandardCharsets.UTF_8).isPresent()
        ? StandardCharsets.UTF_8
        : OTHERS.stream()
            .map(Charset::forName)
            .reduce((best, next) -> words(bytes, next) > words(bytes, best) ? next : best)
            .orElseThrow();
  }

  /** The text in a character set; empty if it is not in that set. */
  private static Optional<String> decoded(byte[] bytes, Charset charset) {
    // The bytes may end within a character.
    var text = CharBuffer.allocate(bytes.length);
    boolean wrong = charset.newDecoder().decode(ByteBuffer.wrap(bytes), text, false).isError();
    return wrong ? Optional.empty() : Optional.of(text.flip().toString());
  }

  /**
   * How many characters beyond ASCII stand in words as words have them, less those that do not: a
   * word has letters of one script, and a Latin one has not many with accents.
   */
  private static long words(byte[] bytes, Charset charset) {
    var text = decoded(bytes, charset);
    if (text.isEmpty()) {
      return Long.MIN_VALUE;
    }
    long signs = text.get().chars().filter(c -> c > LAST_ASCII && !Character.isLetter(c)).count();
    return WORD.matcher(text.get())
            .results()
            .map(MatchResult::group)
            .mapToLong(
                word -> {
                  long others = word.chars().filter(c -> c > LAST_ASCII).count();
                  boolean latin = LATIN.matcher(word).matches() && others * 2 <= word.length() + 1;
                  return latin || OTHER_SCRIPT.matcher(word).matches() ? others : -others;
                })
            .sum()
        - signs;
  }
}
