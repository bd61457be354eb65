package gambrel.pages.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.StylesheetFactory;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.UserAgentCallback;

/** The style sheets of the templates, each parsed once, since template files are read once. */
final class StyleSheets {
  /** Enough for each language, paper size and kind of page; more are parsed for each page. */
  private static final int MOST = 64;

  private final Map<List<Sheet>, List<Stylesheet>> known = new ConcurrentHashMap<>();

  private record Sheet(String address, List<String> media, String content) {
    static Sheet of(StylesheetInfo info) {
      return new Sheet(info.getUri(), info.getMedia(), info.getContent().orElse(""));
    }
  }

  /**
   * The sheets of a page and those that they import, in their order.
   *
   * @param agent opens those that are in files
   */
  List<Stylesheet> parsed(List<StylesheetInfo> sheets, String medium, UserAgentCallback agent) {
    var key = sheets.stream().map(Sheet::of).toList();
    var parsed = known.get(key);
    if (parsed == null) {
      parsed = parse(sheets, medium, new StylesheetFactoryImpl(agent));
      if (known.size() < MOST) {
        known.putIfAbsent(key, parsed);
      }
    }
    return parsed;
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
