package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.night.Trees;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a single row does to a random shop, and what it leaves alone. */
class OneRowTest {
  private static final String CORRECTIONS = "corrections.csv";

  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  private LawShop shop(String name, int seed) {
    return new LawShop(folder.resolve(name), seed);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aRowVoidedByACorrectionIsAsIfItHadNeverBeenWeighed(int seed) {
    var voided = shop("voided", seed);
    var pick = pick(voided, seed);
    correct(voided, pick, "status", "void");
    var never = shop("never", seed);
    change(never, pick, row -> new HashMap<>());

    voided.night().assertSameFigures(never.night(), "seed " + seed + " " + pick);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aRowCorrectedIsAsIfItHadBeenKeyedRight(int seed) {
    for (var field : List.of("net", "body", "pieces", "batch", "code")) {
      var corrected = shop("corrected " + field, seed);
      var pick = pick(corrected, seed);
      var value = valueOf(corrected, field);
      correct(corrected, pick, field, value);
      var right = shop("right " + field, seed);
      change(
          right,
          pick,
          row -> {
            row.put(field, value);
            return row;
          });

      corrected.night().assertSameFigures(right.night(), "seed " + seed + " " + field + pick);
    }
  }

  private static String valueOf(LawShop shop, String field) {
    return switch (field) {
      case "net" -> "7.25";
      case "pieces" -> "2";
      case "batch" -> "NEW1";
      case "body" -> shop.file("bodies.csv").rows().get(0).get("body");
      default -> shop.file("codes.csv").rows().get(0).get("code").replace("*", "1");
    };
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anotherBodyOnAnotherScaleChangesNoFigureOfTheRest(int seed) {
    var shop = shop("shop", seed);
    var before = shop.night();
    shop.change("bodies.csv", file -> plus(file, Map.of("body", "zz", "species", "goat")));
    shop.change("scales.csv", f -> plus(f, Map.of("scale", "zz", "division", "0.01")));
    shop.change("codes.csv", f -> plus(f, Map.of("code", "zz", "item", "carcase", "step", "hot")));
    shop.write(
        "exports/zz.csv",
        "scale,ticket,time,body,code,net\n"
            + ("zz,1," + shop.asOf().toLocalDate().minusDays(2) + "T09:00,zz,zz,11.5\n"));
    var after = shop.night();

    for (var name : List.of("bodies.csv", "cuts.csv", "pieces.csv", "batches.csv")) {
      assertEquals(
          before.rows(name), after.table(name).where(r -> !"zz".equals(r.get("body"))).rows());
    }
    assertEquals(before.rows("statements.csv"), after.rows("statements.csv"));
  }

  private static CsvFile plus(CsvFile file, Map<String, String> row) {
    var rows = new ArrayList<>(file.rows());
    rows.add(row);
    return file.with(rows);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aSecondRunOfTheSameNightTouchesNothing(int seed) {
    var shop = shop("shop", seed);
    var out = folder.resolve("out");
    shop.run(out);
    var published = Trees.published(out);
    Trees.age(out);
    var times = Trees.times(out);
    shop.run(out);

    assertEquals(published, Trees.published(out));
    assertEquals(times, Trees.times(out));
  }

  /** A row of an export, by file and index. */
  private record Pick(String file, int row) {
    String place() {
      return file + ":" + (row + 2);
    }
  }

  private static Pick pick(LawShop shop, long seed) {
    var random = new SplittableRandom(seed);
    var files = new ArrayList<>(shop.exports().entrySet());
    var file = files.get(random.nextInt(files.size()));
    return new Pick(file.getKey(), random.nextInt(file.getValue().rows().size()));
  }

  /** Of several corrections the latest stands, and this one is the earliest: all others do too. */
  private static void correct(LawShop shop, Pick pick, String field, String value) {
    var scale = shop.exports().get(pick.file()).rows().get(pick.row()).get("scale");
    shop.change(
        CORRECTIONS,
        f ->
            plus(
                f,
                Map.of(
                    "scale",
                    scale,
                    "ticket",
                    pick.place(),
                    "field",
                    field,
                    "value",
                    value,
                    "by",
                    "AB",
                    "on",
                    "2001-01-01",
                    "reason",
                    "law")));
  }

  private static void change(LawShop shop, Pick pick, UnaryOperator<Map<String, String>> change) {
    shop.change(
        pick.file(),
        file -> {
          var rows = new ArrayList<>(file.rows());
          rows.set(pick.row(), change.apply(new HashMap<>(rows.get(pick.row()))));
          return file.with(rows);
        });
  }
}
