package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/**
 * The owner's month, ready to be set. Whatever is empty does not show.
 *
 * @param page what every page carries
 * @param words fixed words by key, see {@link Words#labels()}
 * @param shop whose month it is
 * @param heading the month
 * @param known as of when it is known
 * @param first what needs a look, and five figures against last year
 * @param story the month in a few sentences
 * @param held what waits for a person
 * @param parts the chapters, part by part
 */
public record SummaryView(
    PageView page,
    Map<String, String> words,
    ShopView shop,
    String heading,
    String known,
    FirstPage first,
    List<String> story,
    List<Held> held,
    List<PartView> parts) {
  /** Copies the collections. */
  public SummaryView {
    words = Map.copyOf(words);
    story = List.copyOf(story);
    held = List.copyOf(held);
    parts = parts.stream().filter(part -> !part.isEmpty()).toList();
  }
}
