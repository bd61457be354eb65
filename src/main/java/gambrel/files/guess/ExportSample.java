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
import java.util.Optional;

/**
 * The beginnings of the exports in one folder.
 *
 * @param charset their character set
 * @param files in path order; blank ones are left out
 */
record ExportSample(Charset charset, List<SampleFile> files) {
  private static final int MOST_FILES = 40;
  private static final int MOST_BYTES = 100_000;

  /** The letter ü of German and the letter ü of DOS, which no Western text of Windows has. */
  private static final byte DOS_LETTER = (byte) 0x81;

  /** The beginning of one export; {@code path} is relative to the shop folder. */
  record SampleFile(String path, List<TextLine> lines) {}

  /** Reads the beginnings of exports. */
  static ExportSample of(Path folder, List<String> paths) throws IOException {
    var contents = new ArrayList<byte[]>();
    for (String path : paths.subList(0, Math.min(MOST_FILES, paths.size()))) {
      try (var in = Files.newInputStream(folder.resolve(path))) {
        contents.add(in.readNBytes(MOST_BYTES));
      }
    }
    var charset =
        contents.stream()
            .map(ExportSample::charset)
            .filter(found -> !found.equals(StandardCharsets.UTF_8))
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
    var form = new TextForm(List.of(), '"', charset, 0, true, Optional.empty(), '.');
    var all = CountedLines.read(new ByteArrayInputStream(bytes), form).lines();
    // If the file goes on, the last line is incomplete.
    boolean cut = bytes.length == MOST_BYTES && all.size() > 1;
    return all.subList(0, cut ? all.size() - 1 : all.size());
  }

  /**
   * UTF-8 if it is, UTF-16 if every other byte is zero, else windows-1252, as most scales write, or
   * that of DOS.
   */
  private static Charset charset(byte[] bytes) {
    int zeros = 0;
    int odd = 0;
    boolean dos = false;
    for (int i = 0; i < bytes.length; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
      odd += bytes[i] == 0 && i % 2 == 1 ? 1 : 0;
      dos |= bytes[i] == DOS_LETTER;
    }
    if (zeros * 3 > bytes.length) {
      return odd * 2 > zeros ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
    }
    return isUtf8(bytes)
        ? StandardCharsets.UTF_8
        : Charset.forName(dos ? "IBM850" : "windows-1252");
  }

  private static boolean isUtf8(byte[] bytes) {
    // The bytes may end within a character.
    var text = CharBuffer.allocate(bytes.length);
    var decoder = StandardCharsets.UTF_8.newDecoder();
    return !decoder.decode(ByteBuffer.wrap(bytes), text, false).isError();
  }
}
