package gambrel.pages.owner;

import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.night.RefusedException;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;

/** Runs a shop folder and leaves its owner's pages as PDFs, to be looked at. */
public final class OwnerPreview {
  private static final String POUNDS = "lb";

  private OwnerPreview() {}

  /**
   * Runs the shop of the first argument into the folder of the second, as of the third. A number in
   * place of a moment makes up a shop of so many bodies in the first folder; {@code lb} after it
   * has it in pounds and on letter paper, and lines of shop.properties change that.
   */
  public static void main(String[] args) throws RefusedException {
    var folder = Path.of(args[0]);
    if (!args[2].matches("\\d+")) {
      run(folder, args[1], args[2], List.of());
      return;
    }
    var more = List.of(args).subList(3, args.length);
    var shop = new BusyShop(folder, 1, more.contains(POUNDS));
    more.stream().filter(setting -> !setting.equals(POUNDS)).forEach(shop::set);
    shop.with(Integer.parseInt(args[2])).inputs();
    var months = List.of(YearMonth.parse(BusyShop.MONTH));
    run(folder, args[1], BusyShop.EARLIER, months);
    run(folder, args[1], BusyShop.LATER, months);
  }

  private static void run(Path folder, String out, String moment, List<YearMonth> months)
      throws RefusedException {
    var inputs = Inputs.read(folder, Progress.NONE);
    var documents = new OwnerDocuments(inputs.shop().settings());
    new NightlyRun(inputs, documents).run(Path.of(out), OffsetDateTime.parse(moment), months);
  }
}
