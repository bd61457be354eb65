package gambrel.night;

import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Small PDFs with the figures attached as in real ones, and with a few words about their arguments.
 */
public final class TinyDocuments implements Documents {
  @Override
  public byte[] statement(
      Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
    var words =
        "statement "
            + planned.customer()
            + ' '
            + planned.body()
            + " r"
            + planned.revision()
            + "\nchanges "
            + changes.map(Object::toString).orElse("not known");
    return TinyPdf.of(words, RegisterStore.FIGURES, figures);
  }

  @Override
  public byte[] draft(Night night, Planned planned, byte[] figures) {
    var words = "draft " + planned.customer() + ' ' + planned.account().decision().reasons();
    return TinyPdf.of(words, RegisterStore.FIGURES, figures);
  }

  @Override
  public byte[] toPrint(Night night, List<Printed> customers) {
    var who = customers.stream().map(printed -> printed.customer().id()).toList();
    return TinyPdf.of("to print " + who, "none", new byte[0]);
  }

  @Override
  public MailText mail(Night night, Register register, Letter letter) {
    return new MailText("statements", "en", String.join(" ", letter.bodies()));
  }

  @Override
  public byte[] summary(MonthReport month) {
    return TinyPdf.of("summary " + month.records().month(), "none", new byte[0]);
  }

  @Override
  public byte[] morning(MorningReport report) {
    var issued = report.issued().stream().map(row -> row.file()).collect(Collectors.joining(" "));
    var todo =
        report.notices().stream()
            .map(NoticeWords.ENGLISH::message)
            .collect(Collectors.joining("\n"));
    return TinyPdf.of("issued " + issued + "\n" + todo, "none", new byte[0]);
  }
}
