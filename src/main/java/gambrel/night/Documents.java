package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageMemory;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import java.util.List;
import java.util.Optional;

/**
 * Makes the PDFs of a night. Statements and drafts are made on several threads at a time.
 *
 * @see gambrel.pages.render.template.TemplateProblem thrown by each where a template cannot be used
 */
public interface Documents {
  /**
   * A customer's statement.
   *
   * @param changes what is different from the statement that it replaces; empty where that is not
   *     known
   * @param figures the figures as they are attached
   */
  byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures);

  /** The draft of a statement that is held. */
  byte[] draft(Night night, Planned planned, byte[] figures);

  /** The owner's summary of a month. Summaries are made on several threads at a time. */
  byte[] summary(MonthReport month);

  /** The morning sheet. */
  byte[] morning(MorningReport report);

  /** The same documents, those that were made before taken from {@code memory}. */
  default Documents remembering(PageMemory memory) {
    return this;
  }
}
