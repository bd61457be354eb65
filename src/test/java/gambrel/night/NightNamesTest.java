package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A statement is under the output folder, whatever the names of body and customer are. */
class NightNamesTest {
  private static final String NEXT = "2026-03-07T02:00";

  @TempDir private Path folder;

  private NightShop shop() {
    return new NightShop(folder.resolve("in/shop"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..", "../../x", "/etc/x", "C:\\x", "a b", "-x", "@x", "=1+1", "+1", "'x", "'=x", "a\"b",
        "a,b", "a;b", "<b>&", "%2F", "~", "~2", ".hidden", "B1-r2", "con", "ÄÖ", "𝟙", "a*?|x"
      })
  void anUglyIdStaysInItsFolderAndIsKnownAgain(String id) {
    var shop = shop();
    shop.add("customers.csv", '"' + id.replace("\"", "\"\"") + "\",Somebody").beef(id, id);

    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");
    shop.run(NEXT);

    var all = Trees.files(folder);
    var statements = all.stream().filter(f -> f.contains("/statements/")).toList();
    assertEquals(2, statements.size(), statements::toString);
    assertTrue(
        statements.get(1).matches("in/shop/reports/statements/[\\w%~-]+/[\\w%~-]+-r2\\.pdf"),
        statements::toString);
    assertTrue(all.stream().allMatch(f -> f.startsWith("in/shop/")), all::toString);
  }

  @Test
  void aVeryLongIdHasAShorterNameThatStays() {
    var shop = shop().beef("x".repeat(400), "ann").beef("x".repeat(401), "ann");

    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");
    shop.run(NEXT);

    var names = Trees.files(shop.reports().resolve("statements/ann"));
    assertEquals(4, names.size());
    assertTrue(names.stream().allMatch(n -> n.matches("x+~[0-9a-f]{16}-r[12]\\.pdf")));
  }

  @Test
  void idsThatDifferInCaseOnlyKeepTheirNamesWhenOneComesLater() {
    var shop = shop().add("customers.csv", "ANN,Another").beef("b1", "ann");
    shop.run(NightShop.NIGHT);
    shop.beef("B1", "ANN");
    shop.run(NEXT);

    assertEquals(
        List.of("ANN/B1~2-r1.pdf", "ann~2/b1-r1.pdf"),
        Trees.files(shop.reports().resolve("statements")));
  }
}
