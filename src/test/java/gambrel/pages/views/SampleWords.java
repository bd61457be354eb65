package gambrel.pages.views;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The words files as they lie among the templates. */
final class SampleWords {

  static final Path FOLDER = Path.of("templates");
  static final Words ENGLISH = Words.of(List.of(file("words_en.properties")));
  static final Words AMERICAN =
      Words.of(List.of(file("words_en.properties"), file("words_en_US.properties")));

  private SampleWords() {}

  static String file(String name) {
    try {
      return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
