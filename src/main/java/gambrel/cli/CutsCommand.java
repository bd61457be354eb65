package gambrel.cli;

import gambrel.files.folder.ShopReader;
import gambrel.files.folder.UnreadableShop;
import gambrel.pages.explain.CutList;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.shop.Shop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;

/** Prints the items that codes may name. */
final class CutsCommand extends Command {
  CutsCommand() {
    super("cuts", "Prints every item that codes.csv may name, as a tree.");
    takes("SHOP", "the shop folder");
    takes("[SPECIES]", "beef, veal, lamb, pork, goat or game; default those of the shop's bodies");
  }

  @Override
  int work() {
    try {
      var read = ShopReader.read(folder(), new ArrayList<>());
      var trees = species(read).stream().map(read.cuts()::of).map(CutList::of).toList();
      for (int i = 0; i < trees.size(); i++) {
        out().print(i == 0 ? "" : "\n");
        trees.get(i).forEach(out()::println);
      }
      return 0;
    } catch (UnreadableShop e) {
      err().println("gambrel: " + e.getMessage() + ".");
      return 2;
    }
  }

  /** The species that is asked for, else those of the shop's bodies; of a shop without any all. */
  private Collection<Species> species(Shop read) {
    var asked = parameter(1);
    if (asked.isPresent()) {
      return List.of(
          FileWord.find(Species.class, asked.get())
              .orElseThrow(
                  () -> new BadUsage('"' + asked.get() + "\" is no species of the program.")));
    }
    var ofBodies = read.species();
    return ofBodies.isEmpty() ? EnumSet.allOf(Species.class) : EnumSet.copyOf(ofBodies);
  }
}
