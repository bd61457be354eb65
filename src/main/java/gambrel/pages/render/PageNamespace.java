package gambrel.pages.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/**
 * XHTML with the engine's default styles. They are read from the class path, since the page's user
 * agent opens only templates.
 */
final class PageNamespace extends XhtmlNamespaceHandler {

  private static final String DEFAULTS = "/resources/css/XhtmlNamespaceHandler.css";

  /** Additional default styles: the engine has none for SVG and sectioning elements. */
  private static final String OWN =
      "svg, section, article, header, footer, main, aside, nav, figure, figcaption "
          + "{ display: block }\nstyle { display: none }\n";

  private static final StylesheetInfo DEFAULT_STYLES =
      new StylesheetInfo(
          StylesheetInfo.Origin.USER_AGENT,
          ClosedUserAgent.BASE + ".defaults.css",
          List.of("all"),
          defaults() + OWN);

  private int styleElements;

  @Override
  public Optional<StylesheetInfo> getDefaultStylesheet() {
    return Optional.of(DEFAULT_STYLES);
  }

  /** None, so that the engine makes no links: the device makes them with their tags. */
  @Override
  public String getLinkUri(Element element) {
    return null;
  }

  @Override
  protected StylesheetInfo readLinkElement(Element link) {
    return placed(super.readLinkElement(link), ClosedUserAgent.address(link.getAttribute("href")));
  }

  @Override
  protected StylesheetInfo readStyleElement(Element style) {
    styleElements++;
    var address = ClosedUserAgent.BASE + ".style-" + styleElements + ".css";
    return placed(super.readStyleElement(style), address);
  }

  private static StylesheetInfo placed(StylesheetInfo sheet, String address) {
    return sheet == null
        ? null
        : new StylesheetInfo(
            sheet.getOrigin(), address, sheet.getMedia(), sheet.getContent().orElse(null));
  }

  private static String defaults() {
    try (var in = XhtmlNamespaceHandler.class.getResourceAsStream(DEFAULTS)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
