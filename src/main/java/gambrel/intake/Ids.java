package gambrel.intake;

import gambrel.shop.Body;
import gambrel.shop.IdIndex;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * The ids that other files may name.
 *
 * @param customers the customers, the shop included
 * @param bodies the bodies
 * @param tags other numbers of bodies
 * @param scales the scales
 */
record Ids(IdIndex customers, IdIndex bodies, Set<String> tags, IdIndex scales) {

  /** The ids of these. */
  static Ids of(IdIndex customers, Collection<Body> bodies, Collection<String> scales) {
    var tags = new HashSet<String>();
    bodies.forEach(body -> tags.addAll(body.tags()));
    return new Ids(
        customers, new IdIndex(bodies.stream().map(Body::id).toList()), tags, new IdIndex(scales));
  }

  /** Whether a text is a tag and no body's own id. */
  boolean isTag(String text) {
    return tags.contains(text) && bodies.find(text).isEmpty();
  }
}
