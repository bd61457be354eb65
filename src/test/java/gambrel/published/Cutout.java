package gambrel.published;

import gambrel.scenes.Found;
import gambrel.scenes.Scene;
import java.nio.file.Path;

/**
 * One carcase and what was cut from it, as a published table has it: its pieces are the shop's own
 * items, straight under the carcase, their cuts under them.
 */
final class Cutout {
  private static final String CUTTING = "05T10:00 B1 ";

  private final Scene scene;
  private final String species;

  /** A carcase of a species in a shop that weighs in {@code unit}; {@code live} may be blank. */
  Cutout(Path folder, String unit, String species, String live) {
    this.species = species;
    this.scene =
        new Scene(folder)
            .set("unit=" + unit, "limit.cutting_loss_pct=100", "bins=partly")
            .file(
                "bodies.csv",
                "body,species,killed,customer,live_weight",
                "B1," + species + ",2026-03-02,ann," + live)
            .file("cuts.csv", "species,item,parent,name,kind");
  }

  /** A shop that weighs carcases hot only, so that shares are of the hot weight. */
  Cutout hotOnly() {
    scene.set("rail=hot");
    return this;
  }

  /** The carcase on the rail. */
  Cutout hung(String step, String weight) {
    String day = step.equals("hot") ? "02" : "03";
    scene.weigh(day + "T10:00 B1 " + step + " carcase " + weight);
    return this;
  }

  /** A piece that was weighed on the block. */
  Cutout piece(String name, String weight) {
    String item = item(name, "carcase", "piece");
    scene.weigh(CUTTING + "block " + item + ' ' + weight);
    return this;
  }

  /** A cut that goes home. */
  Cutout pack(String piece, String name, String weight) {
    scene.weigh(CUTTING + "pack " + item(name, piece, "meat") + ' ' + weight);
    return this;
  }

  /** What stays behind. */
  Cutout bin(String piece, String name, String weight) {
    scene.weigh(CUTTING + "bin " + item(name, piece, "waste") + ' ' + weight);
    return this;
  }

  private String item(String name, String parent, String kind) {
    String above = Published.item(parent);
    String item = above.equals("carcase") ? Published.item(name) : id(parent, name);
    scene.add("cuts.csv", String.join(",", species, item, above, item, kind));
    return item;
  }

  /** The item of a cut, told from cuts of the same name of other pieces. */
  static String id(String piece, String name) {
    return Published.item(piece + ' ' + name);
  }

  /** What the night finds. */
  Found found() {
    return scene.at("2026-03-31T00:00");
  }
}
