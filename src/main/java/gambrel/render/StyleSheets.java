package gambrel.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.StylesheetFactory;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.UserAgentCallback;

/**
 * The style sheets of the templates, parsed once: like the templates themselves they stay as they
 * were first read.
 */
final class StyleSheets {
  /** A language, a paper size and a kind of page each; templates that style each page anew end it. */
  private static final int MOST = 64;

  private final Map<List<Sheet>, Cascade> known = new ConcurrentHashMap<>();

  private record Sheet(String address, List<String> media, String content) {
    static Sheet of(StylesheetInfo info) {
      return new Sheet(info.getUri(), info.getMedia(), info.getContent().orElse(""));
    }
  }

  /**
   * The cascade of a page.
   *
   * @param agent opens those that are in files
   */
  Cascade cascade(List<StylesheetInfo> sheets, String medium, UserAgentCallback agent) {
    var key = sheets.stream().map(Sheet::of).toList();
    var cascade = known.get(key);
    if (cascade == null) {
      cascade = Cascade.of(parse(sheets, medium, new StylesheetFactoryImpl(agent)), medium);
      if (known.size() < MOST) {
        known.putIfAbsent(key, cascade);
      }
    }
    return cascade;
  }

  private static List<Stylesheet> parse(
      List<StylesheetInfo> sheets, String medium, StylesheetFactory parser) {
    var parsed = new ArrayList<Stylesheet>();
    for (var info : sheets) {
      if (info.appliesToMedia(medium)) {
        var sheet = parser.getStylesheet(info);
        parsed.addAll(parse(sheet.getImportRules(), medium, parser));
        parsed.add(sheet);
      }
    }
    return parsed;
  }
}
