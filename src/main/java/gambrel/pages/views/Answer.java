package gambrel.pages.views;

import java.util.List;

/**
 * A question that a customer asks, and its answer.
 *
 * @param key the question's stable name, which style sheets may use: {@code packs}, {@code owe},
 *     {@code why}, {@code normal}, {@code mine} or {@code rest}
 * @param question as printed
 * @param lead the answer in a line
 * @param lines explanations of a sentence or two each; may be empty
 */
public record Answer(String key, String question, String lead, List<String> lines) {}
