package gambrel.pages.owner;

import gambrel.pages.views.PageView;
import gambrel.pages.views.ShopView;
import gambrel.pages.words.Wording;
import gambrel.trade.shop.Settings;
import java.util.List;
import java.util.stream.Stream;

/** What every page of the owner's carries: the shop and its paper. */
public final class ShopPart {
  private final Settings settings;
  private final Wording wording;

  public ShopPart(Settings settings, Wording wording) {
    this.settings = settings;
    this.wording = wording;
  }

  /** The page. */
  public PageView page(String title, String head) {
    return new PageView(
        wording.language(),
        settings.paper() == Settings.Paper.LETTER,
        title,
        head,
        String.join(" · ", Stream.concat(Stream.of(settings.name()), lines()).toList()));
  }

  /** The shop. */
  public ShopView shop() {
    List<String> lines = lines().toList();
    return new ShopView(settings.name(), lines);
  }

  /** Address and contact, which the shop writes with semicolons between their lines. */
  private Stream<String> lines() {
    return Stream.of(settings.address(), settings.contact())
        .flatMap(text -> Stream.of(text.split("[;\\n]")))
        .map(String::strip)
        .filter(line -> !line.isEmpty());
  }
}
