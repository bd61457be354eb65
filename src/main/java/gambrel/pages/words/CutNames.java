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

  /**
   * Reads lists of names; a later list replaces names of an earlier one.
   *
   * @param builtIn contents of the built-in files
   * @param shops contents of the shop's files, or of the built-in ones if it has none
   */
  CutNames(List<String> builtIn, List<String> shops) {
    this.languages = Words.of(builtIn).texts();
    this.shops.putAll(Words.of(shops).texts());
    // A name that a shop copied from the built-in list is not the shop's own.
    this.shops.entrySet().removeIf(name -> name.getValue().equals(languages.get(name.getKey())));
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
