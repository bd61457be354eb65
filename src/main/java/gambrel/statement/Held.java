package gambrel.statement;

/**
 * A body that waits for a person.
 *
 * @param body its id and kind
 * @param customer whose it is
 * @param reason in words, with its figures
 * @param advice what to do
 */
public record Held(String body, String customer, String reason, String advice) {}
