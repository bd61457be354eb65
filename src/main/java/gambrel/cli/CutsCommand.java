package gambrel.cli;

import gambrel.files.folder.ShopReader;
import gambrel.files.folder.UnreadableShop;
import gambrel.pages.explain.CutList;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Shop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the items that codes may name. */
@Command(
    name = "cuts",
    mixinStandardHelpOptions = true,
    versionProvider = GambrelCommand.Version.class,
    description = "Prints every item that codes.csv may name, as a tree.")
final class CutsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "SHOP", description = "the shop folder")
  private Path shop;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SPECIES",
      description = "beef, veal, lamb, pork, goat or game; default those of the shop's bodies")
  private String species;

  @Override
  public Integer call() {
    var command = spec.commandLine();
    try {
      var read = ShopReader.read(shop, new ArrayList<>());
      var trees = species(read).stream().map(read.cuts()::of).map(CutList::of).toList();
      for (int i = 0; i < trees.size(); i++) {
        command.getOut().print(i == 0 ? "" : "\n");
        trees.get(i).forEach(command.getOut()::println);
      }
      return 0;
    } catch (UnreadableShop e) {
      command.getErr().println("gambrel: " + e.getMessage() + ".");
      return 2;
    }
  }

  /** The species that is asked for, else those of the shop's bodies; of a shop without any all. */
  private Collection<Species> species(Shop read) {
    if (species != null) {
      var asked = FileWord.find(Species.class, species);
      return List.of(
          asked.orElseThrow(
              () ->
                  new ParameterException(
                      spec.commandLine(), "\"" + species + "\" is no species of the program.")));
    }
    var ofBodies = read.bodies().values().stream().map(Body::species).collect(Collectors.toSet());
    return ofBodies.isEmpty() ? EnumSet.allOf(Species.class) : EnumSet.copyOf(ofBodies);
  }
}
