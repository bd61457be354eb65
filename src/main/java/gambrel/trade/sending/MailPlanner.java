package gambrel.trade.sending;

import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.sending.Unsent.Why;
import gambrel.trade.shop.Customer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Decides which statements are mailed: those in force that were issued by the night's moment, for
 * customers who get them by e-mail.
 *
 * @param night the shop as it is now
 * @param register every statement
 * @param settings the mail settings
 * @param usable whether mail can be sent to an address
 */
public record MailPlanner(
    Night night, Register register, MailSettings settings, Predicate<String> usable) {

  /**
   * What is to be mailed.
   *
   * @param letters the messages, by customer, then by night
   * @param unsent the statements that do not go out by themselves
   */
  public record MailPlan(List<Letter> letters, List<Unsent> unsent) {
    /** Copies the lists. */
    public MailPlan {
      letters = List.copyOf(letters);
      unsent = List.copyOf(unsent);
    }
  }

  /** What is not yet sent. */
  public MailPlan plan(SentBook sent) {
    var rows =
        register.latest().stream()
            .filter(row -> !row.issued().toLocalDate().isBefore(settings.since()))
            .filter(row -> sent.of(row).filter(s -> s.reply().equals(Reply.SENT)).isEmpty());
    return plan(rows, sent);
  }

  /**
   * The statement of a customer about a body, whatever became of it; without letters and unsent
   * statements if there is none in force that goes by e-mail.
   *
   * @param wanted {@code CUSTOMER/BODY}
   */
  public MailPlan again(String wanted) {
    return plan(
        register.latest().stream().filter(row -> wanted.equals(row.customer() + '/' + row.body())),
        new SentBook(List.of()));
  }

  private MailPlan plan(Stream<RegisterRow> statements, SentBook sent) {
    var now = night.asOf().toLocalDateTime();
    Map<List<Object>, List<RegisterRow>> byLetter = new LinkedHashMap<>();
    var unsent = new ArrayList<Unsent>();
    statements
        .filter(row -> !row.issued().isAfter(now))
        .filter(row -> customer(row).delivery() == Customer.Delivery.EMAIL)
        .forEach(
            row ->
                obstacle(row, sent.of(row))
                    .ifPresentOrElse(
                        unsent::add,
                        () ->
                            byLetter
                                .computeIfAbsent(
                                    List.of(row.customer(), row.issued()), k -> new ArrayList<>())
                                .add(row)));
    var letters = byLetter.values().stream().map(this::letter).toList();
    return new MailPlan(letters, unsent);
  }

  private Letter letter(List<RegisterRow> statements) {
    var customer = customer(statements.get(0));
    return new Letter(customer, address(customer), statements);
  }

  private Customer customer(RegisterRow row) {
    return night.shop().customer(row.customer());
  }

  private String address(Customer customer) {
    return settings.isTrial() ? settings.allTo() : customer.email();
  }

  /** Why a statement does not go out; empty if it does. */
  private Optional<Unsent> obstacle(RegisterRow row, Optional<SentRow> before) {
    var customer = customer(row);
    if (!night.isOwner(row.customer(), row.body())) {
      return Optional.of(new Unsent(row, Why.OWNER));
    }
    if (night.bodies().get(row.body()).decision().state() == State.HELD) {
      return Optional.of(new Unsent(row, Why.HELD));
    }
    if (!usable.test(customer.email())) {
      return Optional.of(new Unsent(row, Why.ADDRESS));
    }
    var reply = before.map(SentRow::reply);
    if (reply.equals(Optional.of(Reply.UNKNOWN))) {
      return Optional.of(new Unsent(row, Why.UNSURE));
    }
    boolean isSame = before.filter(sent -> sent.address().equals(address(customer))).isPresent();
    return reply
        .filter(refusal -> isSame && refusal.isFinal())
        .map(refusal -> new Unsent(row, Why.REFUSED, refusal.words()));
  }
}
