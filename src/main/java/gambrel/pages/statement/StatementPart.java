package gambrel.pages.statement;

import gambrel.pages.words.Formats;
import gambrel.pages.words.Wording;

/** A part of the page that is being put into words. */
abstract class StatementPart {
  /** The body and the customer. */
  final StatementContext subject;

  /** The customer's words. */
  final Wording wording;

  /** How the customer's numbers and dates are printed. */
  final Formats formats;

  StatementPart(StatementContext subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.formats = subject.formats();
  }

  /** A sentence with its figures. */
  final String say(String key, String... figures) {
    return wording.say(key, figures);
  }
}
