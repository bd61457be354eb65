package gambrel.trade.notice;

import java.util.Comparator;

/**
 * One row of {@code data/notices.csv}. It has values but no sentence; {@link NoticeWords} makes the
 * sentence.
 *
 * @param severity the consequence
 * @param code the stable code
 * @param saying the key of the sentence, which is the code and a variant if the code has several
 *     sentences, and the values
 * @param advice the variant whose advice is given; empty for the variant of {@code saying}
 * @param place file and line
 * @param scale the scale, or empty
 * @param ticket the ticket, or empty
 * @param body the body, or empty
 * @param raw the row of the export, or empty
 */
public record Notice(
    Severity severity,
    NoticeCode code,
    Phrase saying,
    String advice,
    Place place,
    String scale,
    String ticket,
    String body,
    String raw)
    implements NamedValues<Notice> {
  /** The order of {@code data/notices.csv}: file, line, code, then the other columns. */
  public static final Comparator<Notice> ORDER =
      Comparator.comparing(Notice::place)
          .thenComparing(n -> n.code().id())
          .thenComparing(Notice::body)
          .thenComparing(Notice::scale)
          .thenComparing(Notice::ticket)
          .thenComparing(n -> n.saying().toString());

  /** A notice with the only sentence of its code and the code's usual severity. */
  public static Notice of(NoticeCode code, Place place) {
    return of(code, Phrase.of(code.name()), place);
  }

  /** A notice without a place, with the only sentence of its code. */
  public static Notice of(NoticeCode code) {
    return of(code, Place.NONE);
  }

  /** A notice without a place, with one of several sentences of its code. */
  public static Notice of(NoticeCode code, String variant) {
    return of(code, variant, Place.NONE);
  }

  /** A notice with one of several sentences of its code. */
  public static Notice of(NoticeCode code, String variant, Place place) {
    return of(code, Phrase.of(code.name() + '.' + variant), place);
  }

  /** A notice with the sentence {@code saying}, whose key begins with the code. */
  public static Notice of(NoticeCode code, Phrase saying, Place place) {
    return new Notice(code.severity(), code, saying, "", place, "", "", "", "");
  }

  @Override
  public Notice with(String name, Value value) {
    return saying(saying.with(name, value));
  }

  /** The same notice with the values of a phrase instead of its own. */
  public Notice withAll(Phrase phrase) {
    return saying(new Phrase(saying.key(), phrase.values()));
  }

  private Notice saying(Phrase saying) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice at another place. */
  public Notice at(Place place) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice about {@code body}. */
  public Notice aboutBody(String body) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice about a scale's ticket. */
  public Notice aboutTicket(String scale, String ticket) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice with the advice of another variant. */
  public Notice advising(String variant) {
    return new Notice(severity, code, saying, variant, place, scale, ticket, body, raw);
  }

  /** The same notice with another severity. */
  public Notice as(Severity severity) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice with the row of the export. */
  public Notice quoting(String raw) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }
}
