package gambrel.trade.register;

import gambrel.trade.shop.Shop;
import java.util.HashMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Paths of statements in the output folder; a customer or body keeps its first name. */
public final class StatementFiles {
  private static final String NAME = "([A-Za-z0-9_%~-]+)";
  private static final Pattern ISSUED =
      Pattern.compile("statements/" + NAME + '/' + NAME + "-r\\d+\\.pdf");
  private static final Pattern DRAFT = Pattern.compile("held/" + NAME + '/' + NAME + "\\.pdf");

  private final FileNames customers;
  private final FileNames bodies;

  /** For the customers and bodies of a shop and of its register. */
  public StatementFiles(Shop shop, Register register) {
    var customerIds = new TreeSet<>(shop.customers().keySet());
    shop.bodies().values().forEach(body -> customerIds.addAll(body.owners().keySet()));
    var customerNames = new HashMap<String, String>();
    var bodyNames = new HashMap<String, String>();
    for (var row : register.rows()) {
      var path = ISSUED.matcher(row.file());
      if (path.matches()) {
        customerNames.put(row.customer(), path.group(1));
        bodyNames.put(row.body(), path.group(2));
      }
    }
    customers = new FileNames(customerIds, customerNames);
    bodies = new FileNames(shop.bodies().keySet(), bodyNames);
  }

  /** Whether a path could be an issued statement's. */
  public static boolean isIssued(String path) {
    return ISSUED.matcher(path).matches();
  }

  /** Whether a path could be a draft's. */
  public static boolean isDraft(String path) {
    return DRAFT.matcher(path).matches();
  }

  /** The file of an issued statement. */
  public String issued(Planned planned) {
    return "statements/"
        + customers.of(planned.customer())
        + '/'
        + bodies.of(planned.body())
        + "-r"
        + planned.revision()
        + ".pdf";
  }

  /** The file of a draft. */
  public String held(Planned planned) {
    return "held/" + customers.of(planned.customer()) + '/' + bodies.of(planned.body()) + ".pdf";
  }
}
