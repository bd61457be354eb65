package gambrel.trade.notice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Prints the documentation's table of notices, its meanings taken from the enum's own comments. */
public final class NoticeTable {
  private static final Path SOURCE = Path.of("src/main/java/gambrel/trade/notice/NoticeCode.java");
  private static final Pattern CONSTANT =
      Pattern.compile("/\\*\\* ([^/]*?) \\*/\\s+([A-Z_]+)\\(\\s*Severity\\.", Pattern.DOTALL);

  private NoticeTable() {}

  /** Prints the table. */
  public static void main(String[] args) throws IOException {
    System.out.println(String.join("\n", lines()));
  }

  /** A notice with a name in capitals for each value that a row to paste may hold. */
  private static Notice example(NoticeCode code) {
    return Notice.of(code, Place.NONE)
        .aboutTicket("SCALE", "TICKET")
        .with("first", "FILE:LINE")
        .with("unit", "UNIT")
        .with("status", "STATUS")
        .with("code", "CODE")
        .with("item", "ITEM")
        .with("near", "?")
        .with("step", "STEP");
  }

  /** The table as lines of Markdown, in the order of the enum. */
  static List<String> lines() throws IOException {
    var lines = new ArrayList<String>();
    lines.add("| code | usual severity | means | what to do |");
    lines.add("|---|---|---|---|");
    var constants = CONSTANT.matcher(Files.readString(SOURCE));
    while (constants.find()) {
      var code = NoticeCode.valueOf(constants.group(2));
      lines.add(
          String.join(
              " | ",
              "| `" + code.id() + "`",
              code.severity().id(),
              constants.group(1).replaceAll("\\s+\\*\\s+", " "),
              NoticeWords.ENGLISH.advice(example(code)).replace("|", "\\|") + " |"));
    }
    if (lines.size() != NoticeCode.values().length + 2) {
      throw new IllegalStateException("a code has no comment of its own");
    }
    return lines;
  }
}
