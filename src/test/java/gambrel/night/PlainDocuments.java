package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Documents that are one line of text, for tests of figures or publishing. */
public final class PlainDocuments implements Documents {
  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    return text("statement " + planned.customer() + ' ' + planned.body() + '\n', figures);
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    return text("draft " + planned.customer() + ' ' + planned.body() + '\n', figures);
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    return text("to print " + customers.size() + '\n', new byte[0]);
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    return new MailText("statements", "en", String.join(" ", letter.bodies()));
  }

  @Override
  public byte[] summary(MonthReport month) {
    return text("summary " + month.records().month() + '\n', new byte[0]);
  }

  @Override
  public byte[] morning(MorningReport report) {
    return text("morning " + report.issued().size() + '\n', new byte[0]);
  }

  private static byte[] text(String head, byte[] rest) {
    return (head + new String(rest, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
  }
}
