package gambrel.pages.views;

/**
 * A thing and what is to be said of it.
 *
 * @param label the thing, in a few words
 * @param text what is known of it
 */
public record Fact(String label, String text) {}
