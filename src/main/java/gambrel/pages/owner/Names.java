package gambrel.pages.owner;

import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/** How the owner's pages call bodies and people. */
public final class Names {
  private final Night night;
  private final Wording wording;

  public Names(Night night, Wording wording) {
    this.night = night;
    this.wording = wording;
  }

  /** The name of a customer, or of the shop. */
  public String customer(String id) {
    return night.shop().customer(id).name();
  }

  /** Everybody who owns a share of a body. */
  public String owners(Body body) {
    return names(body.owners().keySet());
  }

  /** Everybody who owns a share of a body or gets packs of it. */
  String customers(BodyAccount account) {
    return names(account.entitlements().keySet());
  }

  private String names(Collection<String> ids) {
    return ids.stream().sorted().map(this::customer).collect(Collectors.joining(", "));
  }

  /** A body's id and species. */
  String body(BodyAccount account) {
    return account.body().id() + ", " + species(account.body());
  }

  /** Species and class, how many head if more than one, and what became of it if it was not cut. */
  public String kind(Body body) {
    var parts = new ArrayList<String>();
    String species = species(body);
    parts.add(species);
    String category = wording.category(body);
    if (!category.isEmpty() && !category.equalsIgnoreCase(species)) {
      parts.add(category);
    }
    if (body.head() > 1) {
      parts.add(wording.say("summary.head", wording.formats().count(body.head())));
    }
    if (body.outcome() != Outcome.CUT) {
      parts.add(wording.say("summary.outcome." + body.outcome().name().toLowerCase(Locale.ROOT)));
    }
    return String.join(", ", parts);
  }

  private String species(Body body) {
    return wording.say("summary.kind." + body.species().id());
  }
}
