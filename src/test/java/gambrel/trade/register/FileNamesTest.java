package gambrel.trade.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileNamesTest {
  private static String name(String id) {
    return new FileNames(List.of(id), Map.of()).of(id);
  }

  @ParameterizedTest
  @CsvSource({
    "B-07_a, B-07_a",
    "B 7, B%207",
    ".., %2E%2E",
    "a/b, a%2Fb",
    "a\\b, a%5Cb",
    "C:x, C%3Ax",
    "5%, 5%25",
    "a~2, a%7E2",
    "é, %C3%A9",
    "𝟙, %F0%9D%9F%99"
  })
  void everyByteThatIsNoLetterDigitUnderscoreOrHyphenIsEscaped(String id, String name) {
    assertEquals(name, name(id));
  }

  @Test
  void idsThatDifferInCaseOnlyAreNumberedInTheOrderOfTheIds() {
    var names = new FileNames(List.of("bob", "Bob", "BOB"), Map.of());

    assertEquals(
        List.of("BOB", "Bob~2", "bob~3"),
        List.of(names.of("BOB"), names.of("Bob"), names.of("bob")));
  }

  @Test
  void aNameOnceGivenStaysWhateverIdComesLater() {
    var names = new FileNames(List.of("Bob", "bob"), Map.of("bob", "bob"));

    assertEquals(List.of("Bob~2", "bob"), List.of(names.of("Bob"), names.of("bob")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"con", "NUL", "Aux", "com1", "LPT9"})
  void namesThatWindowsKeepsForDevicesAreNumberedToo(String id) {
    assertEquals(id + "~2", name(id));
    assertEquals(id + "-7", name(id + "-7"));
  }

  @Test
  void aLongIdKeepsItsBeginningAndIsToldApartByItsDigest() {
    var one = "é".repeat(60) + "1";
    var other = "é".repeat(60) + "2";

    assertTrue(name(one).length() <= 120);
    assertTrue(name(one).matches("(%C3%A9)+(%C3)?~[0-9a-f]{16}"), name(one));
    assertNotEquals(name(one), name(other));
    assertEquals("x".repeat(120), name("x".repeat(120)));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void noTwoIdsShareANameOnAnyFileSystem(long seed) {
    var random = new SplittableRandom(seed);
    var ids = new TreeSet<String>();
    for (int i = 0; i < 300; i++) {
      ids.add(
          random
              .ints(1 + random.nextInt(3), 0, 12)
              .mapToObj(c -> "abAB.~%2é/ -".substring(c, c + 1))
              .reduce("", String::concat));
    }

    var names = new FileNames(ids, Map.of());

    var seen = new HashSet<String>();
    ids.forEach(id -> assertTrue(seen.add(names.of(id).toLowerCase(Locale.ROOT)), id));
    seen.forEach(name -> assertTrue(name.matches("[a-z0-9_%~-]+"), name));
  }
}
