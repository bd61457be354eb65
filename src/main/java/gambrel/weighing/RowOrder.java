package gambrel.weighing;

import java.math.BigInteger;
import java.time.LocalDateTime;
import java.util.Optional;

/** Whether an export lists a scale's rows from the newest back: by ticket, else by time. */
final class RowOrder {
  /** So many more steps back than forward are no clock that was changed. */
  private static final int PLAINLY_BACK = 3;

  private Optional<BigInteger> lastTicket = Optional.empty();
  private LocalDateTime lastTime;
  private int byTicket;
  private int byTime;
  private boolean numbered;

  /** Takes the next row. */
  void add(ExportRow row, LocalDateTime time) {
    var ticket = number(row.get(Field.TICKET));
    if (lastTicket.isPresent() && ticket.isPresent()) {
      numbered = true;
      byTicket += ticket.get().compareTo(lastTicket.get());
    }
    if (lastTime != null) {
      byTime += Integer.signum(time.compareTo(lastTime));
    }
    lastTicket = ticket;
    lastTime = time;
  }

  boolean isNewestFirst() {
    return numbered ? byTicket < 0 : byTime <= -PLAINLY_BACK;
  }

  /** A ticket that is a plain number. */
  static Optional<BigInteger> number(String ticket) {
    boolean plain = !ticket.isEmpty() && ticket.chars().allMatch(c -> c >= '0' && c <= '9');
    return plain ? Optional.of(new BigInteger(ticket)) : Optional.empty();
  }
}
