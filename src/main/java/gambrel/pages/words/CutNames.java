package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What cuts are called in a language. Of several names the first stands: the shop's for this
 * language, the shop's in its list of cuts, the language's, the region's.
 *
 * <p>A name is listed as {@code ITEM=NAME} for every species or {@code SPECIES.ITEM=NAME} for one.
 */
public final class CutNames {
  private final Map<String, String> shops = new HashMap<>();
  private final Map<String, String> languages;

  private CutNames(Map<String, String> builtIn, Map<String, String> all) {
    languages = builtIn;
    shops.putAll(all);
    // A copy of the built-in list is no word of the shop's.
    shops.entrySet().removeIf(name -> name.getValue().equals(builtIn.get(name.getKey())));
  }

  /**
   * Reads lists of names; a later one stands before an earlier one.
   *
   * @param builtIn contents of the built-in files
   * @param shops contents of the shop's files, or of the built-in ones where it has none
   */
  static CutNames of(List<String> builtIn, List<String> shops) {
    return new CutNames(Words.of(builtIn).texts(), Words.of(shops).texts());
  }

  String of(Species species, Item item) {
    return find(shops, species, item)
        .or(() -> item.ownName() ? Optional.of(item.name()) : find(languages, species, item))
        .orElse(item.name());
  }

  private static Optional<String> find(Map<String, String> names, Species species, Item item) {
    var ofSpecies = names.get(species.id() + '.' + item.id());
    return Optional.ofNullable(ofSpecies == null ? names.get(item.id()) : ofSpecies);
  }
}
