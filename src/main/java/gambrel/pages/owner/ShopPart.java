package gambrel.pages.owner;

import gambrel.pages.views.PageView;
import gambrel.pages.views.ShopView;
import gambrel.pages.words.Wording;
import gambrel.trade.shop.Settings;
import java.util.List;
import java.util.stream.Stream;

/**
 * The shop and its paper, which all pages for the owner carry.
 *
 * @param settings the shop's settings
 * @param wording the language
 */
public record ShopPart(Settings settings, Wording wording) {

  /** What all pages of a document carry. */
  public PageView page(String title, String head) {
    return new PageView(
        wording.language(),
        settings.paper() == Settings.Paper.LETTER,
        title,
        head,
        String.join(" · ", Stream.concat(Stream.of(settings.name()), lines()).toList()));
  }

  /** Name, address and contact of the shop. */
  public ShopView shop() {
    return new ShopView(settings.name(), lines().toList(), List.of());
  }

  /** The lines of address and contact. In the settings semicolons divide them. */
  private Stream<String> lines() {
    return Stream.of(settings.address(), settings.contact())
        .flatMap(text -> Stream.of(text.split("[;\\n]")))
        .map(String::strip)
        .filter(line -> !line.isEmpty());
  }
}
