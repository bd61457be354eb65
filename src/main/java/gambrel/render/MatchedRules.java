package gambrel.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Selector;
import org.xhtmlrenderer.css.newmatch.Selector.Axis;
import org.xhtmlrenderer.css.sheet.PropertyDeclaration;

/**
 * What style sheets say of the elements on one path of {@link Traits} from the root: worked out for
 * the first of them and remembered for all others, on all pages.
 */
final class MatchedRules {
  private final List<Selector> forChildren = new ArrayList<>();
  private final Map<String, List<PropertyDeclaration>> pseudo = new HashMap<>();
  private final Map<String, CascadedStyle> pseudoStyles = new HashMap<>();
  private final Map<Traits, MatchedRules> children = new ConcurrentHashMap<>();
  private final AtomicInteger room;
  private CascadedStyle style = CascadedStyle.emptyCascadedStyle;

  /** The rules that wait for the root element, in order of precedence. */
  MatchedRules(List<Selector> all, int room) {
    this.forChildren.addAll(all);
    this.room = new AtomicInteger(room);
  }

  private MatchedRules(AtomicInteger room) {
    this.room = room;
  }

  /** The element's own style. */
  CascadedStyle style() {
    return style;
  }

  /** The style of a pseudo-element such as {@code before}; null if it has none. */
  CascadedStyle style(String pseudoElement) {
    return pseudoStyles.get(pseudoElement);
  }

  /** The rules of a child of an element that has these. */
  MatchedRules of(Element child, OwnStyles own) {
    var traits = Traits.of(child);
    var known = children.get(traits);
    if (known != null) {
      return known;
    }
    var witness = own.witness(child);
    var matched = match(child, witness, own);
    if (!witness.wasAskedForMore() && room.getAndDecrement() > 0) {
      children.put(traits, matched);
    }
    return matched;
  }

  private MatchedRules match(Element child, Witness witness, OwnStyles own) {
    var result = new MatchedRules(room);
    var properties = new ArrayList<>(own.presentational(child));
    for (var selector : forChildren) {
      if (selector.getAxis() == Axis.DESCENDANT_AXIS) {
        result.forChildren.add(selector);
      }
      if (selector.matches(child, witness, witness)) {
        result.take(selector, selector.matchesDynamic(child, witness, witness), properties);
      }
    }
    properties.addAll(own.inline(child));
    result.finish(properties);
    return result;
  }

  private void take(Selector matched, boolean dynamic, List<PropertyDeclaration> properties) {
    if (matched.getPseudoElement() != null) {
      pseudo
          .computeIfAbsent(matched.getPseudoElement(), p -> new ArrayList<>())
          .addAll(matched.getRuleset().getPropertyDeclarations());
    } else if (dynamic && matched.getChainedSelector() != null) {
      forChildren.add(matched.getChainedSelector());
    } else if (dynamic) {
      properties.addAll(matched.getRuleset().getPropertyDeclarations());
    }
  }

  private void finish(List<PropertyDeclaration> properties) {
    style = cascaded(properties);
    pseudo.forEach((name, declared) -> pseudoStyles.put(name, cascaded(declared)));
    pseudo.clear();
  }

  private static CascadedStyle cascaded(List<PropertyDeclaration> properties) {
    return properties.isEmpty()
        ? CascadedStyle.emptyCascadedStyle
        : CascadedStyle.createLayoutStyle(properties);
  }
}
