package gambrel.oracle;

import java.time.LocalDate;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** One line of bodies.csv; {@code killed} and {@code live} are null where blank. */
record Beast(
    String id,
    String species,
    String grade,
    LocalDate killed,
    BigFraction live,
    String customer,
    int head,
    List<String> tags,
    String outcome) {

  boolean cancelled() {
    return outcome.equals("cancelled");
  }

  boolean condemned() {
    return outcome.equals("condemned");
  }

  /** Leaves the shop uncut, or is lost: no boning, no loss. */
  boolean uncut() {
    return outcome.equals("whole") || condemned();
  }

  static Beast of(Csv.Line line, Setup setup) {
    var killed = setup.legible(line, "killed");
    var head = setup.legible(line, "head");
    return new Beast(
        line.get("body"),
        line.get("species"),
        line.get("class"),
        killed.isBlank() ? null : setup.date(killed),
        Num.ofCell(setup.legible(line, "live_weight")),
        line.get("customer"),
        head.isBlank() ? 1 : Integer.parseInt(head),
        List.of(line.get("tags").split(" +")),
        setup.legible(line, "outcome"));
  }
}
