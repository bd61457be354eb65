package gambrel.pages.views;

import java.util.List;

/**
 * That a statement is not final.
 *
 * @param sentence that the shop is checking it
 * @param reasons in plain words, one each
 */
public record DraftView(String sentence, List<String> reasons) {
  /** Copies the reasons. */
  public DraftView {
    reasons = List.copyOf(reasons);
  }
}
