package gambrel.pages.statement;

import gambrel.night.Inputs;
import gambrel.night.PdfDocuments;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Planned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prints every statement of a shop folder into another folder, to be looked at. */
public final class Printing {

  private Printing() {}

  /** Takes the shop folder, the moment, the folder to print into, and bodies to print, or none. */
  public static void main(String[] args) throws Exception {
    var shop = Path.of(args[0]);
    var folder = Files.createDirectories(Path.of(args[2]));
    var inputs = Inputs.read(shop, Progress.NONE);
    var zone = inputs.shop().settings().zone();
    var moment = LocalDateTime.parse(args[1]).atZone(zone).toOffsetDateTime();
    var night = new Reckoner(inputs.shop(), inputs.exports()).at(moment);
    var documents = PdfDocuments.of(shop, inputs.shop().settings());
    var wanted = List.of(args).subList(3, args.length);
    for (var planned : all(night)) {
      if (!wanted.isEmpty() && !wanted.contains(planned.body())) {
        continue;
      }
      boolean held = planned.account().decision().state() == State.HELD;
      byte[] bytes =
          held
              ? documents.draft(night, planned, new byte[0])
              : documents.statement(night, planned, Optional.of(List.of()), new byte[0]);
      Files.write(folder.resolve(planned.body() + "-" + planned.customer() + ".pdf"), bytes);
    }
  }

  /** Every statement that is due or held. */
  static List<Planned> all(Night night) {
    var all = new ArrayList<Planned>();
    for (var account : night.bodies().values()) {
      var state = account.decision().state();
      if (state == State.ISSUED || state == State.HELD) {
        for (String customer : account.customers()) {
          all.add(new Planned(customer, account, Optional.empty(), false));
        }
      }
    }
    return all;
  }
}
