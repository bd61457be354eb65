package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.insight.usual.LikeBodies;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageMemory;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Settings;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Makes the PDFs of a night. Statements and drafts are made on several threads at a time.
 *
 * @see gambrel.pages.render.template.TemplateProblem thrown by each if a template cannot be used
 */
public interface Documents {
  /**
   * A customer's statement.
   *
   * @param changes the differences from the statement that it replaces; empty if unknown
   * @param figures the figures to attach
   */
  byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures);

  /** The draft of a statement that is held; {@code figures} are attached. */
  byte[] draft(Night night, Planned planned, byte[] figures);

  /** The owner's summary of a month. Summaries are made on several threads at a time. */
  byte[] summary(MonthReport month);

  /** How many findings of a month stand on the first page of its summary. */
  default int findingsOnFirstPage(MonthReport month) {
    return 0;
  }

  /** The morning sheet. */
  byte[] morning(MorningReport report);

  /**
   * The statements of a customer that are printed.
   *
   * @param statements the documents, in order
   */
  record Printed(Customer customer, List<byte[]> statements) {
    /** Copies the list. */
    public Printed {
      statements = List.copyOf(statements);
    }
  }

  /** One file to print, of all customers in order. */
  byte[] toPrint(Night night, List<Printed> customers);

  /**
   * The words of a message.
   *
   * @param language BCP 47 tag
   */
  record MailText(String subject, String language, String text) {}

  /** The words of a message that carries statements. */
  MailText mail(Night night, Register register, Letter letter);

  /** Makes the documents of a shop; tests use plainer ones than PDFs. */
  @FunctionalInterface
  interface Maker {
    /** The documents of a shop; {@code folder} is the shop folder. */
    Documents of(Path folder, Settings settings);
  }

  /** The same documents; pages that {@code memory} has are not made again. */
  default Documents remembering(PageMemory memory) {
    return this;
  }

  /** The same documents, whose statements compare their bodies with {@code bodies}. */
  default Documents comparing(LikeBodies bodies) {
    return this;
  }

  /** The same documents without layout: templates are filled and checked, the bytes are none. */
  default Documents fillingOnly() {
    return this;
  }
}
