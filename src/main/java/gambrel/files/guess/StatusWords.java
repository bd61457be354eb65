package gambrel.files.guess;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Words that scales print for a weighing that counts, or for one that is cancelled. */
final class StatusWords {
  private static final Pattern OK =
      Pattern.compile(
          "ok|valid|good|accepted|normal|gültig|gut|stable|stabil|pass|passed|bueno|bon");

  private static final Pattern VOID =
      Pattern.compile(
          "void(ed)?|storno|storniert|stornée?|annulée?|anulad[oa]|anul|cancel(l?ed)?|deleted|del|"
              + "reversed|gelöscht|borrado");

  /** Words of one meaning on one make and another on the next. */
  private static final Pattern DOUBTFUL =
      Pattern.compile(
          "us|unst.*|unstable|instabil|err(or)?|ol|ul|over|under|bad|ng|fail(ed)?|invalid|x|v|c|d"
              + "|rej(ect(ed)?)?|[^\\p{L}\\d]+");

  private static final List<String> YES =
      List.of("y", "yes", "1", "true", "j", "ja", "x", "o", "s");
  private static final List<String> NO = List.of("n", "no", "0", "false", "nein", "f");

  private StatusWords() {}

  /** Whether common practice gives a word one meaning. */
  static boolean isCommon(String word) {
    return meaning(word, "").isPresent();
  }

  /** Whether one of the words of a text is for a cancelled weighing, such as before a number. */
  static boolean mentionsVoid(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .anyMatch(word -> VOID.matcher(word).matches());
  }

  /** Whether a word may say that a weighing does not count. */
  static boolean isDoubtful(String word) {
    return DOUBTFUL.matcher(word.toLowerCase(Locale.ROOT)).matches();
  }

  /**
   * What a word means, {@code ok} or {@code void}; empty if it could mean either.
   *
   * @param header the text above its column
   */
  static Optional<String> meaning(String word, String header) {
    String plain = word.toLowerCase(Locale.ROOT);
    boolean asksForVoid = VOID.matcher(header.toLowerCase(Locale.ROOT)).matches();
    if (OK.matcher(plain).matches() || asksForVoid && NO.contains(plain)) {
      return Optional.of("ok");
    }
    boolean isVoid = VOID.matcher(plain).matches() || asksForVoid && YES.contains(plain);
    return isVoid ? Optional.of("void") : Optional.empty();
  }
}
