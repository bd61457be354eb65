package gambrel.pages.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Words")
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
  void of_a_later_file_stand_before_those_of_an_earlier() {
    assertEquals("Part", WORDS.say("cut"));
  }

  @Test
  void take_figures_by_their_place() {
    assertEquals("Pay 5 to Ann, don't wait", WORDS.say("pays", "Ann", "5"));
  }

  @Test
  void take_figures_as_they_are() {
    assertEquals("Pay $1 \\ {0} to {1}, don't wait", WORDS.say("pays", "{1}", "$1 \\ {0}"));
  }

  @Test
  void differ_for_one_and_for_several() {
    assertEquals("1 pack, 2 kg.", WORDS.count("packs.lead", 1, "1", "2 kg"));
    assertEquals("0 packs, 0 kg.", WORDS.count("packs.lead", 0, "0", "0 kg"));
    assertEquals("7 packs, 2 kg.", WORDS.count("packs.lead", 7, "7", "2 kg"));
  }

  @Test
  void take_for_one_what_the_language_counts_as_one() {
    var french = Words.of(List.of("number.singular=0 1\na.one={0} os\na.many={0} pieds\n"));
    assertEquals("0 os", french.count("a", 0, "0"));
    assertEquals("1 os", french.count("a", 1, "1"));
    assertEquals("2 pieds", french.count("a", 2, "2"));
  }

  @Test
  void without_a_dot_in_their_key_are_labels() {
    assertEquals(Map.of("cut", "Part"), Words.of(List.of("cut=Part\na.b=C\n")).labels());
  }

  @Test
  void that_do_not_exist_are_named() {
    var problem = assertThrows(IllegalArgumentException.class, () -> WORDS.say("no.such"));
    assertTrue(problem.getMessage().contains("no.such"));
  }

  @Test
  void that_lack_a_figure_are_named() {
    var problem = assertThrows(IllegalArgumentException.class, () -> WORDS.say("pays", "Ann"));
    assertEquals("\"pays\" needs a figure {1}", problem.getMessage());
  }
}
