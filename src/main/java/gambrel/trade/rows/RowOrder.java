package gambrel.trade.rows;

import gambrel.trade.shop.IdIndex;
import java.time.LocalDateTime;

/** Whether an export lists a scale's rows from the newest back: by ticket, else by time. */
final class RowOrder {
  /** So many more steps back than forward are no clock that was changed. */
  private static final int PLAINLY_BACK = 3;

  private String lastTicket = "";
  private LocalDateTime lastTime;
  private int byTicket;
  private int byTime;
  private boolean numbered;

  /** Takes the next row. */
  void add(ExportRow row, LocalDateTime time) {
    String ticket = row.get(Field.TICKET);
    if (isNumber(lastTicket) && isNumber(ticket)) {
      numbered = true;
      byTicket += Integer.signum(compare(ticket, lastTicket));
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

  /** Whether a ticket is a plain number. */
  static boolean isNumber(String ticket) {
    for (int i = 0; i < ticket.length(); i++) {
      if (ticket.charAt(i) < '0' || ticket.charAt(i) > '9') {
        return false;
      }
    }
    return !ticket.isEmpty();
  }

  /** Compares two tickets that are plain numbers, of any length. */
  static int compare(String one, String other) {
    String a = IdIndex.withoutZeros(one);
    String b = IdIndex.withoutZeros(other);
    return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
  }
}
