package gambrel.files.guess;

import gambrel.files.folder.ItemNames;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the words of a code, or of a text beside it, mean. */
final class CodeMeanings {
  /**
   * The kinds that are offered where a name is only like that of an item. No tub is taken for bone,
   * fat or waste by likeness: nothing would show that it was meat.
   */
  private static final Set<Kind> BY_LIKENESS =
      Set.of(Kind.CARCASE, Kind.PIECE, Kind.MEAT, Kind.TRIM, Kind.OFFAL);

  private static final Set<Kind> PACKED = Set.of(Kind.PIECE, Kind.MEAT, Kind.OFFAL);

  private final CutTrees cuts;
  private final Set<Species> species;
  private final ItemNames names;

  CodeMeanings(Shop shop) {
    this.cuts = shop.cuts();
    this.species = shop.species();
    this.names = new ItemNames(cuts, shop.settings().region());
  }

  /**
   * What a text means that names a step of the rail, items, or something added: two where it has
   * just the words of two, none where it has those of none.
   */
  List<Meaning> named(String text, Set<Species> likely) {
    var step = FileWord.find(Step.class, text).filter(Step::isRail);
    var items = ofSpecies(names.named(text, likely), likely);
    return step.isPresent()
        ? List.of(new Meaning(CutTree.ROOT, step.get()))
        : items.isEmpty()
            ? GuessWords.meaning(text).or(() -> hung(text, likely)).stream().toList()
            : items;
  }

  /** What a text clearly means of each species, though with words cut short; empty if not clear. */
  private List<Meaning> clear(String text, Set<Species> species) {
    var each =
        species.stream()
            .sorted()
            .map(one -> names.clear(text, one).filter(item -> PACKED.contains(item.kind())))
            .toList();
    return each.stream().allMatch(Optional::isPresent)
        ? ofAll(each.stream().flatMap(Optional::stream).distinct().toList(), species)
        : List.of();
  }

  /** What a text may mean, though it has not just the words of it: one thing if that is clear. */
  List<Meaning> near(String text, Set<Species> likely) {
    var items =
        likely.stream()
            .sorted()
            .flatMap(
                one -> names.nearest(text, Set.of(one)).stream().filter(item -> has(one, item)))
            .filter(item -> BY_LIKENESS.contains(item.kind()))
            .filter(item -> !item.id().matches("(left|right)-.*"))
            .distinct()
            .toList();
    var clear = clear(text, likely);
    return clear.isEmpty() ? ofAll(items, likely) : clear;
  }

  /** Whether a quarter of the words of a column, or more, are of cuts or of the rail. */
  boolean areOfCuts(GuessTable.Column column) {
    var words = column.values().stream().distinct().toList();
    long known =
        words.stream()
            .filter(
                word -> GuessWords.railStep(word).isPresent() || !named(word, species).isEmpty())
            .count();
    return known * 4 >= words.size();
  }

  /** Whether each of several species has an item that is meant, or none is. */
  boolean isOfAll(Meaning meaning, Set<Species> species) {
    return meaning.item().isEmpty()
        || species.stream()
            .allMatch(
                one -> meaning.items().stream().anyMatch(id -> cuts.of(one).find(id).isPresent()));
  }

  /** What pages call the items that are meant, species by species; empty if they are none. */
  String onPages(Meaning meaning, Set<Species> species) {
    return species.stream()
        .sorted()
        .flatMap(one -> meaning.items().stream().flatMap(id -> cuts.of(one).find(id).stream()))
        .map(Item::name)
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  /** A part with its step of a text that has words of both, such as HOT SIDE L or LAMB COLD. */
  private Optional<Meaning> hung(String text, Set<Species> likely) {
    String words = GuessWords.withoutRail(text);
    String part = GuessWords.withoutSide(words);
    var parts =
        names.named(part.isEmpty() && !words.isEmpty() ? CutTree.SIDE : part, likely).stream()
            .filter(item -> item.kind() == Kind.CARCASE)
            .map(Item::id)
            .distinct()
            .toList();
    var id =
        ItemNames.isOfSpecies(part)
            ? Optional.of(CutTree.ROOT)
            : parts.stream().filter(only -> parts.size() == 1).findFirst();
    return GuessWords.railStep(text).flatMap(step -> id.map(of -> new Meaning(of, step)));
  }

  /** Items, each with its step. Where each of several species has one of them, they share a row. */
  private List<Meaning> ofSpecies(List<Item> items, Set<Species> species) {
    var each = items.stream().flatMap(CodeMeanings::withStep).toList();
    var steps = each.stream().map(Meaning::step).distinct().toList();
    boolean isOneEach =
        items.size() > 1
            && steps.size() == 1
            && species.stream()
                .allMatch(one -> items.stream().filter(item -> has(one, item)).count() == 1);
    return isOneEach ? List.of(Meaning.ofEach(items, steps.get(0))) : each;
  }

  /**
   * Each item that all species have, with its step; else the first of each species together; else
   * each one.
   */
  private List<Meaning> ofAll(List<Item> items, Set<Species> species) {
    var shared = items.stream().filter(i -> species.stream().allMatch(s -> has(s, i))).toList();
    if (!shared.isEmpty()) {
      return shared.stream().flatMap(CodeMeanings::withStep).toList();
    }
    var firsts =
        species.stream()
            .flatMap(one -> items.stream().filter(item -> has(one, item)).limit(1))
            .distinct()
            .toList();
    return species.size() > 1 && firsts.size() == species.size()
        ? ofSpecies(firsts, species)
        : items.stream().flatMap(CodeMeanings::withStep).toList();
  }

  private boolean has(Species one, Item item) {
    return cuts.of(one).find(item.id()).isPresent();
  }

  private static Stream<Meaning> withStep(Item item) {
    var steps =
        switch (item.kind()) {
          case BONE, FAT, WASTE ->
              CutTree.USUALLY_BIN.contains(item.id())
                  ? List.of(Step.BIN)
                  : List.of(Step.BIN, Step.PACK);
          case TRIM -> List.of(Step.TUB);
          case CARCASE -> List.of(Step.HOT, Step.COLD);
          case ADDED -> List.of(Step.ADDED);
          default -> List.of(Step.PACK);
        };
    return steps.stream().map(step -> new Meaning(item.id(), step));
  }
}
