package gambrel.pages.owner.morning;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;

/**
 * Notices that are one thing to do: those with equal words and advice, the corrections of one
 * likely cause, and many of another code in one file, since they mostly have one cause.
 */
public final class NoticeGroups {
  /** More notices of one code in one file are one thing. */
  static final int MOST_OF_A_KIND = 5;

  private static final Comparator<Notice> WORST_FIRST =
      Comparator.comparing(Notice::severity).thenComparing(Notice.ORDER);

  private NoticeGroups() {}

  /** The groups, worst first; within one the notices are in order. */
  public static List<List<Notice>> of(List<Notice> notices) {
    var groups = new ArrayList<List<Notice>>();
    Groups.inOrder(
            notices.stream().sorted(WORST_FIRST),
            n -> List.of(n.severity(), n.code(), n.place().file()))
        .forEach(
            (kind, alike) -> {
              if (alike.size() > MOST_OF_A_KIND && kind.get(1) != NoticeCode.LIKELY_CAUSE) {
                groups.add(alike);
              } else {
                groups.addAll(Groups.inOrder(alike.stream(), NoticeGroups::told).values());
              }
            });
    return groups;
  }

  /** What notices of one thing have in common: the corrections of a likely cause all but these. */
  private static List<Object> told(Notice notice) {
    if (notice.code() != NoticeCode.LIKELY_CAUSE) {
      return List.of(notice.saying(), notice.advice());
    }
    var values = new HashMap<>(notice.saying().values());
    values.remove("correction");
    return List.of(new Phrase(notice.saying().key(), values), notice.place());
  }
}
