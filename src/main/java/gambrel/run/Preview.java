package gambrel.run;

import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.register.FigureReader;
import gambrel.register.MorningReport;
import gambrel.register.Planned;
import gambrel.render.TemplateProblem;
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

  /** Writes the statement of the customer's body that was cut last. */
  public static Outcome write(Path file, Night night, Documents documents) {
    var account =
        night.bodies().values().stream()
            .filter(a -> !a.customers().isEmpty() && a.balance().lastCut().isPresent())
            .max(Comparator.comparing(Preview::lastCut, OffsetDateTime.timeLineOrder()));
    if (account.isEmpty()) {
      return new Outcome.Refused("no customer's body has been cut yet, so there is no preview");
    }
    String customer = account.get().customers().get(0);
    var figures = FigureReader.read(account.get(), customer, night.shop().settings());
    var planned = new Planned(customer, account.get(), Optional.empty(), false);
    try {
      Files.write(
          file,
          documents.statement(
              night, planned, Optional.of(List.of()), RegisterStore.bytes(figures)));
      return new Outcome.Done(new MorningReport(night, List.of(), List.of(), List.of(), false));
    } catch (TemplateProblem problem) {
      return new Outcome.Refused(problem.getMessage());
    } catch (IOException e) {
      return Outcome.Failed.of(e);
    }
  }

  private static OffsetDateTime lastCut(BodyAccount account) {
    return account.balance().lastCut().orElseThrow();
  }
}
