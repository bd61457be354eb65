package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.PageMemory;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
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

  /** The same documents without layout: templates are filled and checked, the bytes are none. */
  default Documents fillingOnly() {
    return this;
  }
}
