package gambrel.pages.statement;

import gambrel.pages.views.MailView;
import gambrel.pages.views.MailView.Attached;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.sending.Letter;

/**
 * Composes the message to a customer. It names animals by their numbers and not by their marks,
 * since the mark of an animal may hold the name of another person.
 *
 * @param night the shop
 * @param register every statement
 * @param letter the statements that go
 * @param wording the customer's words
 */
public record MailComposer(Night night, Register register, Letter letter, Wording wording) {
  private static final int MOST_NAMES = 5;

  /** The subject. */
  public String subject() {
    String shop = night.shop().settings().name();
    String bodies = wording.names(letter.bodies(), MOST_NAMES);
    return wording.count("mail.subject", letter.statements().size(), shop, bodies);
  }

  /** The view of the text. */
  public MailView view() {
    return new MailView(
        wording.say("mail.greeting", letter.customer().name()),
        wording.counted("mail.lead", letter.statements().size()),
        letter.statements().stream().map(this::attached).toList(),
        wording.say("mail.closing"),
        StatementComposer.shop(night.shop().settings()));
  }

  private Attached attached(RegisterRow row) {
    var body = night.bodies().get(row.body()).body();
    String species = wording.say("species." + body.species().id());
    var replaced = register.replaced(row);
    String replaces =
        replaced.map(old -> ChangesPart.replaces(wording, row.revision(), old)).orElse("");
    return new Attached(
        wording.say("mail.statement", species, row.body(), row.fileName()), replaces);
  }
}
