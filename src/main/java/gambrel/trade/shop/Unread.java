package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of the shop folder cannot be read.
 *
 * @param rows the rows that could concern a statement, in reading order
 * @param codes the rows of {@code codes.csv} by code; these codes count as unknown
 * @param items the rows of {@code cuts.csv} that name an item; these items count as unknown
 */
public record Unread(List<UnreadRow> rows, Map<String, Place> codes, List<UnreadItem> items) {
  /** Everything was read. */
  public static final Unread NONE = new Unread(List.of(), Map.of(), List.of());

  /** Copies the collections. */
  public Unread {
    rows = List.copyOf(rows);
    codes = Map.copyOf(codes);
    items = List.copyOf(items);
  }

  /**
   * A row of {@code cuts.csv} that cannot be read.
   *
   * @param species its species; empty if that is not legible
   * @param item the item that it names
   * @param place file and line
   */
  public record UnreadItem(Optional<Species> species, String item, Place place) {}

  /** The row of an item of a species that cannot be read; of any species if none is given. */
  public Optional<Place> item(String item, Optional<Species> species) {
    return items.stream()
        .filter(row -> row.item().equals(item))
        .filter(
            row -> species.isEmpty() || row.species().isEmpty() || row.species().equals(species))
        .map(UnreadItem::place)
        .findFirst();
  }
}
