package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WordsTest {

  private static final Words WORDS =
      Words.of(
          List.of(
              """
              cut=Cut
              packs.lead.one={0} pack, {1}.
              packs.lead.many={0} packs, {1}.
              pays=Pay {1} to {0}, don't wait
              """,
              "cut=Part\n"));

  @Test
  void ofALaterFileStandBeforeThoseOfAnEarlier() {
    assertEquals("Part", WORDS.say("cut"));
  }

  @Test
  void takeFiguresByTheirPlace() {
    assertEquals("Pay 5 to Ann, don't wait", WORDS.say("pays", "Ann", "5"));
  }

  @Test
  void takeFiguresAsTheyAre() {
    assertEquals("Pay $1 \\ {0} to {1}, don't wait", WORDS.say("pays", "{1}", "$1 \\ {0}"));
  }

  @Test
  void differForOneAndForSeveral() {
    assertEquals("1 pack, 2 kg.", WORDS.count("packs.lead", 1, "1", "2 kg"));
    assertEquals("0 packs, 0 kg.", WORDS.count("packs.lead", 0, "0", "0 kg"));
    assertEquals("7 packs, 2 kg.", WORDS.count("packs.lead", 7, "7", "2 kg"));
  }

  @Test
  void takeForOneWhatTheLanguageCountsAsOne() {
    var french = Words.of(List.of("number.singular=0 1\na.one={0} os\na.many={0} pieds\n"));
    assertEquals("0 os", french.count("a", 0, "0"));
    assertEquals("1 os", french.count("a", 1, "1"));
    assertEquals("2 pieds", french.count("a", 2, "2"));
  }

  @Test
  void withoutADotInTheirKeyAreLabels() {
    assertEquals(Map.of("cut", "Part"), Words.of(List.of("cut=Part\na.b=C\n")).labels());
  }

  @Test
  void thatDoNotExistAreNamed() {
    var problem = assertThrows(IllegalArgumentException.class, () -> WORDS.say("no.such"));
    assertTrue(problem.getMessage().contains("no.such"));
  }

  @Test
  void thatLackAFigureAreNamed() {
    var problem = assertThrows(IllegalArgumentException.class, () -> WORDS.say("pays", "Ann"));
    assertEquals("\"pays\" needs a figure {1}", problem.getMessage());
  }
}
