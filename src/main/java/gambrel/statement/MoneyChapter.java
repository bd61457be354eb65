package gambrel.statement;

import java.util.List;

/**
 * The month's charges, payments and bought stock. Whatever is empty does not show.
 *
 * @param income what customers were charged, a species each
 * @param suppliers the shop's own bodies of the month and the twelve before, by supplier
 * @param stock the shop's own bodies of the month, least margin first
 * @param unpaid statements not paid in full, oldest first
 * @param unpaidTotal their sum
 * @param weights of the month in sum
 * @param totals of the month's statements
 * @param remarks how to read it
 */
public record MoneyChapter(
    List<Income> income,
    List<Supplier> suppliers,
    List<Stock> stock,
    List<Unpaid> unpaid,
    String unpaidTotal,
    Weights weights,
    List<Fact> totals,
    Remarks remarks) {
  /** Copies the lists. */
  public MoneyChapter {
    income = List.copyOf(income);
    suppliers = List.copyOf(suppliers);
    stock = List.copyOf(stock);
    unpaid = List.copyOf(unpaid);
    totals = List.copyOf(totals);
  }

  /**
   * The weights of the month in sum: of customers, the shop and shared bodies apart.
   *
   * @param owners whose, a column each
   * @param rows a weight or a number of bodies each
   */
  public record Weights(List<String> owners, List<Sums> rows) {
    /** Copies the lists. */
    public Weights {
      owners = List.copyOf(owners);
      rows = List.copyOf(rows);
    }
  }

  /**
   * One sum.
   *
   * @param label of what
   * @param sums with their unit, an owner each; empty for nothing
   */
  public record Sums(String label, List<String> sums) {
    /** Copies the sums. */
    public Sums {
      sums = List.copyOf(sums);
    }
  }

  /**
   * How tables are to be read.
   *
   * @param income of charges
   * @param stock of bought stock
   */
  public record Remarks(List<String> income, List<String> stock) {
    /** Copies the lists. */
    public Remarks {
      income = List.copyOf(income);
      stock = List.copyOf(stock);
    }
  }

  /**
   * What customers were charged for bodies of a species, without tax.
   *
   * @param species its name
   * @param bodies how many
   * @param charges money
   * @param aUnit money for a unit of weight into the boning room
   * @param anHour money for an hour on the block, where pace is known
   * @param beforeAUnit in the twelve months before
   * @param beforeAnHour in the twelve months before
   */
  public record Income(
      String species,
      String bodies,
      String charges,
      String aUnit,
      String anHour,
      String beforeAUnit,
      String beforeAnHour) {}

  /**
   * What came from one supplier.
   *
   * @param supplier the name, with the species
   * @param bodies how many
   * @param takeHome median of take-home, % of cold
   * @param middle its middle half
   * @param cost money paid
   * @param value money at the shop's values
   * @param margin value less cost
   * @param aUnit margin for a unit of cold weight
   */
  public record Supplier(
      String supplier,
      String bodies,
      String takeHome,
      String middle,
      String cost,
      String value,
      String margin,
      String aUnit) {}

  /**
   * One of the shop's own bodies.
   *
   * @param body its id
   * @param kind species and class
   * @param supplier where it came from
   * @param takeHome % of cold
   * @param cost money paid
   * @param value money at the shop's values
   * @param margin value less cost
   */
  public record Stock(
      String body,
      String kind,
      String supplier,
      String takeHome,
      String cost,
      String value,
      String margin) {}

  /**
   * A statement not paid in full.
   *
   * @param issued when
   * @param customer whose
   * @param body of which body
   * @param amount still to pay
   */
  public record Unpaid(String issued, String customer, String body, String amount) {}
}
