package gambrel.files.folder;

import gambrel.files.csv.NameComparison;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.UnreadRow;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The ids that some files of a shop define and others may name.
 *
 * @param cuts the items
 * @param species the species of the bodies
 * @param customers the customers, the shop included
 * @param bodies the bodies
 * @param tags the tags of bodies
 * @param scales the scales
 * @param names what the items are called
 */
record Known(
    CutTrees cuts,
    Set<Species> species,
    IdIndex customers,
    IdIndex bodies,
    Set<String> tags,
    IdIndex scales,
    ItemNames names) {
  /** The ids of these items, customers, bodies and scales. */
  static Known of(
      CutTrees cuts,
      IdIndex customers,
      Collection<Body> bodies,
      Collection<String> scales,
      Region region) {
    return new Known(
        cuts,
        bodies.stream().map(Body::species).collect(Collectors.toSet()),
        customers,
        new IdIndex(bodies.stream().map(Body::id).toList()),
        bodies.stream().flatMap(body -> body.tags().stream()).collect(Collectors.toSet()),
        new IdIndex(scales),
        new ItemNames(cuts, region));
  }

  /** Whether a text is a tag and not the id of a body. */
  boolean isTag(String text) {
    return tags.contains(text) && bodies.find(text).isEmpty();
  }

  /** The row's item, which at least one species must have; empty if the cell is blank. */
  String item(ShopRow row) {
    return row.get("item", CellTypes::item).map(item -> item(row, item)).orElse("");
  }

  /** The item that a row names, which at least one species must have. */
  String item(ShopRow row, String item) {
    if (!isItem(item)) {
      var near = names.nearest(item, species).stream().map(Item::id).map(this::withName).toList();
      String variant = near.isEmpty() ? ".ITEM" : ".ITEM_NEAR";
      throw row.refuse(row.unknown("item", variant).with("cell", item).with("nearest", near));
    }
    return item;
  }

  /**
   * The items that a text means: that with the id; else those of just that name, if no species has
   * two of them. The text itself if there are none. If only species that the shop has no body of
   * have the id, it means what pages call so.
   */
  List<String> named(String text) {
    if (isItem(text)) {
      var called = species.stream().noneMatch(s -> has(s, text)) ? called(text) : List.<String>of();
      return called.isEmpty() ? List.of(text) : called;
    }
    var bySpecies =
        Stream.of(Species.values())
            .map(species -> names.named(text, Set.of(species)))
            .filter(items -> !items.isEmpty())
            .toList();
    return bySpecies.isEmpty() || bySpecies.stream().anyMatch(items -> items.size() > 1)
        ? List.of(text)
        : bySpecies.stream().map(items -> items.get(0).id()).distinct().toList();
  }

  private boolean has(Species one, String item) {
    return cuts.of(one).find(item).isPresent();
  }

  /** The items of the shop's species that pages call so. */
  private List<String> called(String text) {
    return species.stream()
        .flatMap(one -> cuts.of(one).items().stream())
        .filter(item -> NameComparison.plain(item.name()).equals(NameComparison.plain(text)))
        .map(Item::id)
        .distinct()
        .sorted()
        .toList();
  }

  /** Whether a text is the id of the only item that it means, or the name of all on each page. */
  boolean isCalled(List<String> items, String text) {
    String plain = NameComparison.plain(text);
    var called =
        items.stream()
            .flatMap(item -> species.stream().flatMap(one -> cuts.of(one).find(item).stream()))
            .map(item -> NameComparison.plain(item.name()))
            .collect(Collectors.toSet());
    return items.equals(List.of(text)) || called.equals(Set.of(plain));
  }

  /** An item's id, and in brackets what the shop's species call it, if they have it. */
  String withName(String item) {
    String called =
        cuts.all().stream()
            .filter(tree -> species.isEmpty() || species.contains(tree.species()))
            .flatMap(tree -> tree.find(item).stream())
            .map(Item::name)
            .distinct()
            .collect(Collectors.joining("; "));
    return called.isEmpty() ? item : item + " (" + called + ')';
  }

  private boolean isItem(String item) {
    return cuts.all().stream().anyMatch(tree -> tree.find(item).isPresent());
  }

  /** The rows of a folder that cannot be read, in order; its tables were read. */
  List<UnreadRow> unread(ShopFolder folder) {
    return folder.unread().stream()
        .map(this::unread)
        .sorted(Comparator.comparing(UnreadRow::place))
        .toList();
  }

  private UnreadRow unread(ShopRow row) {
    String file = row.place().file();
    var fault = row.fault().orElseThrow();
    var from =
        Stream.of("on", "date")
            .flatMap(column -> row.legible(column, CellTypes::moment).stream())
            .max(Comparator.naturalOrder());
    var names = new HashMap<String, String>();
    for (String column : row.columns()) {
      row.legible(column, (types, text) -> named(file, column, types, text))
          .filter(name -> !name.isEmpty())
          .ifPresent(name -> names.put(column, name));
    }
    if (Set.of("bodies.csv", "shares.csv").contains(file) && names.containsKey("body")) {
      // What else such a row says of its body may be what cannot be read.
      names.keySet().retainAll(Set.of("body"));
    }
    return new UnreadRow(row.place(), text(fault, "column"), text(fault, "cell"), from, names);
  }

  /** What a cell of a row that cannot be read names; empty if there is no such thing. */
  private String named(String file, String column, CellTypes types, String text) {
    return switch (column) {
      case "code", "value", "batch" -> types.id(text);
      case "body" -> file.equals("bodies.csv") ? types.id(text) : bodies.find(text).orElse("");
      case "customer" -> customers.find(text).orElse("");
      case "scale" -> scales.find(text).orElse(text);
      case "item" -> {
        String item = types.item(text);
        yield file.equals("cuts.csv") || isItem(item) ? item : "";
      }
      case "species" -> CellTypes.word(Species.class, text).id();
      case "ticket" -> OfficeTables.ticket(types, text);
      case "date" -> types.date(text).toString();
      case "field" -> OfficeTables.field(types, text).id();
      default -> "";
    };
  }

  private static String text(Notice notice, String name) {
    return notice.saying().values().get(name) instanceof Value.Text text ? text.text() : "";
  }
}
