package gambrel.render;

import java.net.URI;
import java.util.Optional;

/**
 * Addresses that a page may load from: names of template files, written as URLs of one invented
 * folder because the layout engine resolves style sheets against each other only as URLs it knows.
 * Nothing is ever opened by them.
 */
final class PageAddress {

  static final String BASE = "file:/templates/";

  private PageAddress() {}

  /** The full address of a reference made by a page; an unreadable one stays as it is. */
  static String resolve(String reference) {
    try {
      return URI.create(BASE).resolve(reference.replace(" ", "%20")).toString();
    } catch (IllegalArgumentException e) {
      return reference;
    }
  }

  /** The template file that a full address names, or empty for any other place. */
  static Optional<String> file(String address) {
    return address.startsWith(BASE)
        ? Optional.of(address.substring(BASE.length()).replace("%20", " "))
        : Optional.empty();
  }
}
