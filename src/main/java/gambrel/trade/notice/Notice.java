package gambrel.trade.notice;

import java.util.Comparator;

/**
 * One thing that a person should know, as {@code data/notices.csv} lists it. It has no sentence of
 * its own: {@link NoticeWords} puts its values into words.
 *
 * @param severity its consequence
 * @param code its stable code
 * @param saying what is wrong: the code, with a variant where a code has several sentences, and the
 *     values
 * @param advice another variant whose advice is given; empty where that of {@code saying} is
 * @param place where it stands
 * @param scale the scale, or empty
 * @param ticket the ticket, or empty
 * @param body the body, or empty
 * @param raw the row as it was read, or empty
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
  /** The order of {@code data/notices.csv}: file, line, code, then what tells two apart. */
  public static final Comparator<Notice> ORDER =
      Comparator.comparing(Notice::place)
          .thenComparing(n -> n.code().id())
          .thenComparing(Notice::body)
          .thenComparing(Notice::scale)
          .thenComparing(Notice::ticket)
          .thenComparing(n -> n.saying().toString());

  /** A notice of a code with one sentence, with the code's usual severity. */
  public static Notice of(NoticeCode code, Place place) {
    return of(code, Phrase.of(code.name()), place);
  }

  /** A notice of a code with several sentences. */
  public static Notice of(NoticeCode code, String variant, Place place) {
    return of(code, Phrase.of(code.name() + '.' + variant), place);
  }

  /** A notice of a code that says {@code saying}, whose key begins with the code. */
  public static Notice of(NoticeCode code, Phrase saying, Place place) {
    return new Notice(code.severity(), code, saying, "", place, "", "", "", "");
  }

  @Override
  public Notice with(String name, Value value) {
    return saying(saying.with(name, value));
  }

  /** The same notice with the values of a phrase. */
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

  /** The same notice with another consequence. */
  public Notice as(Severity severity) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }

  /** The same notice with the row as it was read. */
  public Notice quoting(String raw) {
    return new Notice(severity, code, saying, advice, place, scale, ticket, body, raw);
  }
}
