package gambrel.ownerpages;

import gambrel.run.Inputs;
import gambrel.run.NightlyRun;
import gambrel.run.RefusedException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;

/** Runs a shop folder and leaves its owner's pages as PDFs, to be looked at. */
public final class OwnerPreview {
  private OwnerPreview() {}

  /**
   * Runs the shop of the first argument into the folder of the second, as of the third; a fourth
   * asks for a made-up shop of so many bodies, a fifth for it in pounds and on letter paper.
   */
  public static void main(String[] args) throws RefusedException {
    var folder = Path.of(args[0]);
    if (args.length > 3) {
      generate(folder, Integer.parseInt(args[3]), args.length > 4);
    }
    var inputs = Inputs.read(folder);
    var documents = new OwnerDocuments(inputs.shop().settings());
    new NightlyRun(inputs, documents)
        .run(Path.of(args[1]), OffsetDateTime.parse(args[2]), List.of());
  }

  private static void generate(Path folder, int bodies, boolean american) {
    var shop = new BusyShop(folder, 1).with(bodies);
    if (american) {
      shop.add("shop.properties", "unit=lb\npaper=letter\nregion=us\nlocale=en-US\ncurrency=USD");
    }
    shop.inputs();
  }
}
