package gambrel.night;

import gambrel.files.guess.LayoutGuesses;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.nio.file.Path;
import java.util.List;

/** Helps a newcomer with exports that fit no layout. */
public final class LayoutHelp {
  private LayoutHelp() {}

  /** What was found in each such file, and a layout to start from, ready to print. */
  public static List<String> lines(Path shop, Inputs inputs, List<Notice> notices) {
    return notices.stream()
        .filter(n -> n.code() == NoticeCode.EXPORT_UNREADABLE && n.place().line() > 0)
        .flatMap(n -> LayoutGuesses.of(shop, inputs.shop(), n.place().file()).stream())
        .flatMap(guess -> guess.lines().stream())
        .toList();
  }
}
