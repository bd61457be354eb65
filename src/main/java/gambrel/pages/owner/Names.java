package gambrel.pages.owner;

import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Names of bodies and customers on the owner's pages.
 *
 * @param night the night's figures
 * @param wording the language
 */
public record Names(Night night, Wording wording) {

  /** The name of a customer, or of the shop. */
  public String customer(String id) {
    return night.shop().customer(id).name();
  }

  /** A body's id and kind, and its owners and the customers who get packs of it. */
  public String ofWhom(BodyAccount account) {
    return body(account) + " · " + customers(account);
  }

  /** A body's id and its owners in brackets; the shop for its reserved id. */
  public String ofBody(String id) {
    var account = night.bodies().get(id);
    return account == null ? customer(id) : id + " (" + owners(account.body()) + ")";
  }

  /** The owners of a body, with commas between their names. */
  public String owners(Body body) {
    return names(body.owners().keySet());
  }

  /** The owners of a body and the customers who get packs of it. */
  public String customers(BodyAccount account) {
    return names(account.entitlements().keySet());
  }

  private String names(Collection<String> ids) {
    return ids.stream().sorted().map(this::customer).collect(Collectors.joining(", "));
  }

  /** The id and species of a body. */
  public String body(BodyAccount account) {
    return account.body().id() + ", " + wording.kind(account.body().species());
  }

  /** Species and class, the number of head if several, and the outcome if the body was not cut. */
  public String kind(Body body) {
    var parts = new ArrayList<String>();
    String species = wording.kind(body.species());
    parts.add(species);
    String category = wording.category(body);
    if (!category.isEmpty() && !category.equalsIgnoreCase(species)) {
      parts.add(category);
    }
    if (body.head() > 1) {
      parts.add(wording.say("summary.head", wording.formats().count(body.head())));
    }
    if (!body.isCut()) {
      parts.add(wording.say("summary.outcome." + body.outcome().name().toLowerCase(Locale.ROOT)));
    }
    return String.join(", ", parts);
  }
}
