package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.night.Documents.Printed;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Customer;
import java.io.IOException;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes {@code to-print.pdf}: the statements of a night for customers who get paper, by name. */
record ToPrint(Night night, Documents documents, Changes changes, PageCache cache) {
  private static final String FILE = "to-print.pdf";

  /**
   * Writes the file, or removes the one of another night if nothing is to be printed. A document
   * that is missing or not as it was issued is left out.
   *
   * @param issued the statements of the night
   * @param notices takes one if the statements are too many for one file
   */
  void write(List<RegisterRow> issued, List<Notice> notices) throws IOException {
    var rows =
        issued.stream().filter(row -> customer(row).delivery() == Customer.Delivery.PRINT).toList();
    int most = night.shop().settings().limits().print();
    var customers = rows.size() > most ? List.<Printed>of() : printed(rows);
    if (rows.size() > most) {
      notices.add(Notice.of(NoticeCode.PRINT_MANY).with("count", rows.size()).with("limit", most));
    }
    if (!customers.isEmpty()) {
      changes.write(FILE, documents.toPrint(night, customers));
    } else if (changes.read(FILE).isPresent()) {
      changes.remove(FILE);
    }
  }

  private Customer customer(RegisterRow row) {
    return night.shop().customer(row.customer());
  }

  /** The documents of each customer in order; customers in the order of a list of names. */
  private List<Printed> printed(List<RegisterRow> rows) throws IOException {
    var names = Collator.getInstance(night.shop().settings().locale());
    var sorted =
        rows.stream()
            .sorted(
                Comparator.comparing((RegisterRow row) -> customer(row).name(), names)
                    .thenComparing(RegisterRow.ORDER))
            .toList();
    var customers = new ArrayList<Printed>();
    for (var group : Groups.inOrder(sorted.stream(), this::customer).entrySet()) {
      var documents = new ArrayList<byte[]>();
      for (var row : group.getValue()) {
        changes
            .readNew(row.file())
            .filter(document -> cache.isWhole(row.file(), document, row.sha256()))
            .ifPresent(documents::add);
      }
      if (!documents.isEmpty()) {
        customers.add(new Printed(group.getKey(), documents));
      }
    }
    return customers;
  }
}
