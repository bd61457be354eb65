package gambrel.pages.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.StylesheetFactory;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.UserAgentCallback;

/** The style sheets of the templates. Each is parsed once for all pages. */
final class StyleSheets {
  /** Enough for every language, paper size and kind of page. Others are parsed each time. */
  private static final int MOST = 64;

  private final Map<List<Sheet>, Parsed> known = new ConcurrentHashMap<>();

  private record Sheet(String address, List<String> media, String content) {
    static Sheet of(StylesheetInfo info) {
      return new Sheet(info.getUri(), info.getMedia(), info.getContent().orElse(""));
    }
  }

  /**
   * What rules can ask about an element.
   *
   * @param parent the match of its parent; null for the root
   * @param own its name and attributes
   * @param before name and attributes of the element before it; empty for a first child
   * @param last whether it is the last child
   */
  record Likeness(Match parent, String own, String before, boolean last) {}

  /** The styles of elements that are alike. Two matches are equal only if they are the same. */
  static final class Match {
    final CascadedStyle style;

    /** Whether it holds for one element only: a rule needed more than a {@link Likeness}. */
    final boolean single;

    /** Styles of the text before or after the element, by name of the pseudo-element. */
    final Map<String, Optional<CascadedStyle>> pseudoElements = new ConcurrentHashMap<>();

    Match(CascadedStyle style, boolean single) {
      this.style = style;
      this.single = single;
    }
  }

  /**
   * Style sheets in their order.
   *
   * @param sheets the sheets of a page and those that they import
   * @param matches what was matched with them on any page
   */
  record Parsed(List<Stylesheet> sheets, Map<Likeness, Match> matches) {
    /** More than the pages of a shop need. Further elements are matched each time. */
    private static final int MOST = 5_000;

    /** The styles of elements like this; the first is matched. */
    Match match(Likeness likeness, Supplier<Match> matching) {
      var known = matches.get(likeness);
      if (known != null) {
        return known;
      }
      var match = matching.get();
      if (match.single || matches.size() >= MOST) {
        return match;
      }
      var earlier = matches.putIfAbsent(likeness, match);
      return earlier == null ? match : earlier;
    }
  }

  /**
   * The sheets of a page and those that they import, in their order.
   *
   * @param agent opens those that are in files
   */
  Parsed parsed(List<StylesheetInfo> sheets, String medium, UserAgentCallback agent) {
    var key = sheets.stream().map(Sheet::of).toList();
    var parsed = known.get(key);
    if (parsed == null) {
      var parser = new StylesheetFactoryImpl(agent);
      parsed = new Parsed(parse(sheets, medium, parser), new ConcurrentHashMap<>());
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
