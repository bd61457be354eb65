package gambrel.night;

import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.FigureReader;
import gambrel.trade.register.Planned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One statement as the templates make it now, for a person who changes them. */
public final class Preview {
  private Preview() {}

  /**
   * Writes the statement of the customer's body that was cut last.
   *
   * @throws RefusedException if there is no such body, or a template is in its way
   */
  public static void write(Path file, Night night, Documents documents)
      throws RefusedException, IOException {
    var account =
        night.bodies().values().stream()
            .filter(a -> !a.customers().isEmpty() && a.balance().lastCut().isPresent())
            .max(Comparator.comparing(Preview::lastCut, OffsetDateTime.timeLineOrder()))
            .orElseThrow(
                () ->
                    new RefusedException(
                        "no customer's body has been cut yet, so there is no preview"));
    String customer = account.customers().get(0);
    var figures = FigureReader.read(account, customer, night.shop().settings());
    var planned = new Planned(customer, account, Optional.empty(), false);
    try {
      byte[] attached = RegisterStore.bytes(figures);
      Files.write(file, documents.statement(night, planned, Optional.of(List.of()), attached));
    } catch (TemplateProblem problem) {
      throw new RefusedException(NoticeWords.ENGLISH.of(Page.phrase(problem)));
    }
  }

  private static OffsetDateTime lastCut(BodyAccount account) {
    return account.balance().lastCut().orElseThrow();
  }
}
