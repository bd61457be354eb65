package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Names of cuts in a language. The first of these is used: the shop's name for this language, the
 * shop's name in its list of cuts, the language's name, the region's name.
 *
 * <p>A name is listed as {@code ITEM=NAME} for every species or {@code SPECIES.ITEM=NAME} for one.
 */
public final class CutNames {
  private final Map<String, String> shops = new HashMap<>();
  private final Map<String, String> languages;

  private CutNames(Map<String, String> builtIn, Map<String, String> all) {
    languages = builtIn;
    shops.putAll(all);
    // A name that a shop copied from the built-in list is not the shop's own.
    shops.entrySet().removeIf(name -> name.getValue().equals(builtIn.get(name.getKey())));
  }

  /**
   * Reads lists of names; a later list replaces names of an earlier one.
   *
   * @param builtIn contents of the built-in files
   * @param shops contents of the shop's files, or of the built-in ones if it has none
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
