package gambrel.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes the demo shop anew; the same files every time. */
public final class DemoShop {
  private DemoShop() {}

  /** Writes the shop folder that the only argument names. */
  public static void main(String[] args) throws IOException {
    var folder = Path.of(args[0]);
    for (var file : files().entrySet()) {
      var path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  /** All files of the folder, by path relative to it. */
  static SortedMap<String, String> files() {
    var floor = new Floor();
    var batches = new Batches(floor);
    work(floor, batches);
    var mishaps = new Mishaps(floor);
    mishaps.happen(Plan.beasts());
    floor.rail.number();
    floor.bench1.number();
    floor.bench2.number();
    var files = new TreeMap<>(OfficeFiles.all());
    files.putAll(Map.of("codes.csv", CodeList.text(), "batches.csv", batches.list()));
    files.put("bodies.csv", new Paperwork(Plan.beasts()).bodies());
    files.put("bench.csv", Paperwork.bench(floor, mishaps.remembered));
    files.put("corrections.csv", Paperwork.corrections(floor, mishaps.remembered));
    files.putAll(floor.rail.files());
    files.put("layouts/rail.properties", RailExport.LAYOUT);
    files.putAll(floor.bench1.files());
    files.putAll(floor.bench2.files());
    return files;
  }

  private static void work(Floor floor, Batches batches) {
    TestWeights.weigh(floor);
    var rail = new Rail(floor);
    var offal = new Offal(floor);
    var weights = new TreeMap<String, Long>();
    for (var beast : Plan.beasts()) {
      weights.put(beast.id(), rail.hang(beast));
      offal.pack(beast);
    }
    var boning = new Boning(floor, batches);
    Plan.beasts().stream()
        .filter(beast -> !beast.cut().isEmpty())
        .sorted(Comparator.comparing(beast -> beast.cut().get(0)))
        .forEach(beast -> boning.cut(beast, weights.get(beast.id())));
    new BoughtIn(floor).cut();
    batches.packCured();
  }
}
