package gambrel.files.guess;

import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import gambrel.files.export.CountedLines;
import gambrel.trade.cuts.Region;
import gambrel.trade.shop.Shop;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Guesses the layouts of exports that fit none, for a newcomer to start from. */
public final class LayoutGuesses {
  private static final int MOST_BYTES = 20_000;
  private static final int MOST_LINES = 40;

  private LayoutGuesses() {}

  /**
   * The guess at an export; empty if it cannot be opened or is blank.
   *
   * @param folder the shop folder
   * @param file the export's path relative to it, with {@code /}
   */
  public static Optional<LayoutGuess> of(Path folder, Shop shop, String file) {
    try (var in = Files.newInputStream(folder.resolve(file))) {
      var bytes = in.readNBytes(MOST_BYTES);
      var charset = charset(bytes);
      var form = new TextForm(List.of(), '"', charset, 0, true, Optional.empty(), '.');
      var all = CountedLines.read(new ByteArrayInputStream(bytes), form).lines();
      // If the file goes on, the last line is incomplete.
      boolean cut = bytes.length == MOST_BYTES && all.size() > 1;
      var lines = all.subList(0, Math.min(MOST_LINES, cut ? all.size() - 1 : all.size()));
      return lines.stream().allMatch(TextLine::isBlank)
          ? Optional.empty()
          : Optional.of(guess(lines, shop, file, charset));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static LayoutGuess guess(List<TextLine> lines, Shop shop, String file, Charset charset) {
    var parts = file.split("/", 3);
    String name = parts.length == 3 ? parts[1] : "NAME";
    var settings = shop.settings();
    var times = new GuessTimes(settings.locale(), settings.region() == Region.US);
    boolean scaleKnown = shop.scales().containsKey(name);
    return new LayoutGuesser(lines, times, shop, scaleKnown)
        .guess(file, "layouts/" + name + ".properties", charset.name());
  }

  /**
   * UTF-8 if it is, UTF-16 if every other byte is zero, else windows-1252, as most scales write.
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
    return isUtf8(bytes) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
  }

  private static boolean isUtf8(byte[] bytes) {
    // The bytes may end within a character.
    var text = CharBuffer.allocate(bytes.length);
    var decoder = StandardCharsets.UTF_8.newDecoder();
    return !decoder.decode(ByteBuffer.wrap(bytes), text, false).isError();
  }
}
