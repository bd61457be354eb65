package gambrel.pages.owner.morning;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Notices that are one thing to do: those with equal words and advice, and many of one code in one
 * file, since they mostly have one cause.
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
              if (alike.size() > MOST_OF_A_KIND) {
                groups.add(alike);
              } else {
                groups.addAll(
                    Groups.inOrder(alike.stream(), n -> List.of(n.saying(), n.advice())).values());
              }
            });
    return groups;
  }
}
