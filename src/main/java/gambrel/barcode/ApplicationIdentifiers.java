package gambrel.barcode;

import gambrel.barcode.ApplicationIdentifier.Content;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The application identifiers, with lengths after the GS1 Barcode Syntax Dictionary
 * (github.com/gs1/gs1-syntax-dictionary, ff2eb4b and 0344bf4).
 */
final class ApplicationIdentifiers {
  /**
   * A line: content, length or least and greatest length, identifiers. A run {@code 310x-316x}
   * stands for every one of them with a last digit of 0 to 5; a star marks predefined lengths.
   */
  private static final String TABLE =
      """
      *CHECKED_DIGITS 18 00
      *CHECKED_DIGITS 14 01 02 03
      *CHECKED_DIGITS 13 410-417
      *DATE 6 11 12 13 15 16 17
      *DIGITS 2 20
      *DIGITS 6 310x-316x 320x-337x 340x-357x 360x-369x
      CHECKED_DIGITS 17 402
      CHECKED_DIGITS 18 8017-8018
      DIGITS 1-6 242
      DIGITS 1-8 30 37
      DIGITS 1-15 3900-3909 3920-3929
      DIGITS 3-15 423 425
      DIGITS 4-18 3910-3919 3930-3939
      DIGITS 13-25 255
      DIGITS 3 422 424 426
      DIGITS 4 3940-3943 8111
      DIGITS 6 3950-3955 4326 7006 8005
      DIGITS 10 4324-4325 7003
      DIGITS 20 4309
      DIGITS 1 4321-4323
      DIGITS 13 7001
      DIGITS 1-4 7004
      DIGITS 6-12 7007
      DIGITS 6-10 7011
      DIGITS 2 7241
      DIGITS 14 8001
      DIGITS 18 8006 8026
      DIGITS 8-12 8008
      DIGITS 1-12 8011
      DIGITS 1-10 8019
      TEXT 1-2 7010
      TEXT 2 4307
      TEXT 1-3 427 7008
      TEXT 4 7040
      TEXT 4-12 421
      TEXT 6-7 4330-4333
      TEXT 1-10 7009
      TEXT 1-12 7005
      TEXT 1-20 10 21 22 243 254 420 4318 7020-7022 710-717 7240 8002 8012
      TEXT 1-25 7242 8013 8020
      TEXT 1-28 235
      TEXT 1-30 240-241 250-251 400-401 403 4308 4319 7002 7023 8004 8010 90
      TEXT 3-30 7230-7239
      TEXT 4-30 7030-7039
      TEXT 13-30 253
      TEXT 14-30 8003
      TEXT 1-34 8007
      TEXT 1-35 4300-4301 4310-4311 4320
      TEXT 1-50 8009
      TEXT 1-70 4302-4306 4312-4317 8110 8112 8200
      TEXT 1-90 8030 91-99
      """;

  private static final Map<String, ApplicationIdentifier> BY_DIGITS = read();
  private static final int SHORTEST = 2;
  private static final int LONGEST = 4;
  private static final int MOST_DECIMALS = 5;

  private ApplicationIdentifiers() {}

  /** The identifier of exactly these digits. */
  static Optional<ApplicationIdentifier> of(String digits) {
    return Optional.ofNullable(BY_DIGITS.get(digits));
  }

  /** The identifier with which {@code text} begins at {@code at}; no two can. */
  static Optional<ApplicationIdentifier> at(String text, int at) {
    for (int end = at + SHORTEST; end <= Math.min(at + LONGEST, text.length()); end++) {
      var found = of(text.substring(at, end));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static Map<String, ApplicationIdentifier> read() {
    var all = new HashMap<String, ApplicationIdentifier>();
    TABLE.lines().map(line -> line.split(" ")).forEach(words -> readLine(words, all));
    return Map.copyOf(all);
  }

  private static void readLine(String[] words, Map<String, ApplicationIdentifier> all) {
    boolean predefined = words[0].startsWith("*");
    var content = Content.valueOf(words[0].substring(predefined ? 1 : 0));
    var lengths = words[1].split("-");
    int fewest = Integer.parseInt(lengths[0]);
    int most = Integer.parseInt(lengths[lengths.length - 1]);
    for (int i = 2; i < words.length; i++) {
      var ends = words[i].replace("x", "").split("-");
      int last = Integer.parseInt(ends[ends.length - 1]);
      for (int number = Integer.parseInt(ends[0]); number <= last; number++) {
        String digits = "%02d".formatted(number);
        if (words[i].contains("x")) {
          for (int decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
            String ai = digits + decimals;
            put(new ApplicationIdentifier(ai, predefined, fewest, most, content), all);
          }
        } else {
          put(new ApplicationIdentifier(digits, predefined, fewest, most, content), all);
        }
      }
    }
  }

  private static void put(
      ApplicationIdentifier identifier, Map<String, ApplicationIdentifier> all) {
    all.put(identifier.ai(), identifier);
  }
}
