package gambrel.demo;

import java.time.LocalDateTime;

/** One row of a scale's export, its ticket given only when all rows of the scale are in order. */
final class Row {
  LocalDateTime time;
  String ticket = "";
  String body = "";
  String code;
  String net = "";
  String gross = "";
  String pieces = "";
  String operator = "";
  String batch = "";
  String customer = "";
  String status = "";

  /** The earlier row that this one voids, by ticket. */
  Row cancels;

  /** The row whose ticket this one carries too. */
  Row sharesTicketOf;

  Row(LocalDateTime time, String code) {
    this.time = time;
    this.code = code;
  }

  /** An equal row without its ticket, so many seconds later. */
  Row copy(int secondsLater) {
    var copy = new Row(time.plusSeconds(secondsLater), code);
    copy.body = body;
    copy.net = net;
    copy.gross = gross;
    copy.pieces = pieces;
    copy.operator = operator;
    copy.batch = batch;
    copy.customer = customer;
    return copy;
  }

  Row body(String id) {
    body = id;
    return this;
  }

  Row batch(String id) {
    batch = id;
    return this;
  }

  Row customer(String id) {
    customer = id;
    return this;
  }

  Row pieces(int number) {
    pieces = Integer.toString(number);
    return this;
  }

  String cell(String column) {
    return switch (column) {
      case "ticket" -> ticket;
      case "time" -> time.withNano(0).toString().length() == 16 ? time + ":00" : time.toString();
      case "body" -> body;
      case "code" -> code;
      case "net" -> net;
      case "gross" -> gross;
      case "pieces" -> pieces;
      case "operator" -> operator;
      case "batch" -> batch;
      case "customer" -> customer;
      case "status" -> cancels == null ? status : "void:" + cancels.ticket;
      default -> throw new IllegalArgumentException(column);
    };
  }
}
