package gambrel.pages.views;

import java.util.List;

/**
 * A statement that is not final.
 *
 * @param sentence that the shop is checking it
 * @param reasons a sentence for each reason
 */
public record DraftView(String sentence, List<String> reasons) {}
