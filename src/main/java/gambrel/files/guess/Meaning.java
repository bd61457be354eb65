package gambrel.files.guess;

import gambrel.trade.cuts.Item;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a code means, as its row of codes.csv says it.
 *
 * @param item the id of an item; of several species one of each, joined; empty for what is no item
 * @param step where the weighed thing is on its way
 */
record Meaning(String item, Step step) {
  /** Something put into a batch that is no item. */
  static final Meaning ADDED = new Meaning("", Step.ADDED);

  static final Meaning TEST = new Meaning("", Step.TEST);

  /** One item of each of several species. */
  static Meaning ofEach(List<Item> items, Step step) {
    return new Meaning(
        items.stream().map(Item::id).collect(Collectors.joining(ScaleCode.PARTED)), step);
  }

  /** The ids of the items; one empty id for what is no item. */
  List<String> items() {
    return List.of(item.split(Pattern.quote(ScaleCode.PARTED)));
  }
}
