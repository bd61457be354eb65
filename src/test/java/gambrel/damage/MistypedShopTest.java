package gambrel.damage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.damage.MistakeJudge.Group;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What people mistype in the shop's tables: no statement goes out that differs from the one it
 * should be, unless what was typed may have been meant. Each slip is one change to one file of a
 * small shop. Every cell and every name of a column comes once before any comes twice. {@code
 * -Ddamages=3000} tries more; {@code -Ddamages.file=charges.csv} those of one file; {@code
 * -Ddamages.tell=true} prints what became of each.
 */
class MistypedShopTest {
  private static final int MISTAKES = Integer.getInteger("damages", 60);
  private static final String ONLY = System.getProperty("damages.file", "");
  private static final boolean TELL = Boolean.getBoolean("damages.tell");
  private static final long SEED = Long.getLong("damages.seed", 1);
  private static final OffsetDateTime AS_OF = OffsetDateTime.parse("2026-10-01T02:00:00+10:00");

  @TempDir private Path temporary;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final Map<String, List<int[]>> decks = new HashMap<>();

  @Test
  void nothingMistypedMakesAWrongStatement() {
    var shop = DemoCut.tables();
    var files = DemoCut.folder(shop);
    var judge =
        new MistakeJudge(
            shop,
            table -> {
              var folder =
                  files.with(table.file(), table.bytes()).writeTo(temporary.resolve("shop"));
              return IssuedPages.of(folder, temporary.resolve("out"), AS_OF);
            });
    assertTrue(judge.whole().issued().size() > 8, () -> judge.whole().states().toString());
    var counts = new TreeMap<String, EnumMap<Group, Integer>>();
    var faults = new ArrayList<String>();
    for (int i = 0; i < MISTAKES; i++) {
      var mistake = next(shop);
      var judgement = judge.judge(mistake);
      count(counts, mistake.before().file(), judgement.group());
      count(counts, mistake.kind().toString(), judgement.group());
      if (TELL) {
        System.out.println(judgement.group() + " " + mistake + "\n    " + judgement.why());
      }
      if (judgement.group() == Group.FAULT) {
        faults.add(mistake + "\n    " + judgement.why());
      }
    }
    counts.forEach((name, groups) -> System.out.println(name + ' ' + groups));
    assertEquals("", String.join("\n", faults));
  }

  private static void count(Map<String, EnumMap<Group, Integer>> counts, String name, Group group) {
    counts.computeIfAbsent(name, n -> new EnumMap<>(Group.class)).merge(group, 1, Integer::sum);
  }

  private Mistake next(Map<String, TypedTable> shop) {
    while (true) {
      var files = shop.keySet().stream().filter(file -> file.contains(ONLY)).toList();
      var table = shop.get(files.get(random.nextInt(files.size())));
      var mistake = inNextCell(table);
      if (mistake.isPresent()) {
        return mistake.get();
      }
    }
  }

  private Optional<Mistake> inNextCell(TypedTable table) {
    var deck = decks.computeIfAbsent(table.file(), f -> new ArrayList<>());
    if (deck.isEmpty()) {
      deck.addAll(cells(table));
    }
    var cell = deck.remove(random.nextInt(deck.size()));
    boolean name = cell[0] < 0 || table.settings() && cell[1] == 0;
    for (int tries = 0; tries < 40; tries++) {
      var kind = Mistyping.values()[random.nextInt(Mistyping.values().length)];
      if (name == (kind.where() == Mistyping.Where.NAME)) {
        var mistake = kind.in(table, Math.max(0, cell[0]), cell[1], random);
        if (mistake.isPresent()) {
          return mistake;
        }
      }
    }
    return Optional.empty();
  }

  /** Row and column of every cell; names of columns stand in the row -1. */
  private static List<int[]> cells(TypedTable table) {
    var cells = new ArrayList<int[]>();
    int columns = table.settings() ? 2 : table.header().size();
    for (int row = table.settings() ? 0 : -1; row < table.rows().size(); row++) {
      for (int column = 0; column < columns; column++) {
        cells.add(new int[] {row, column});
      }
    }
    return cells;
  }
}
