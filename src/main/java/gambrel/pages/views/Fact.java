package gambrel.pages.views;

/**
 * A label and a text.
 *
 * @param label a few words
 * @param text a sentence or a value
 */
public record Fact(String label, String text) {}
