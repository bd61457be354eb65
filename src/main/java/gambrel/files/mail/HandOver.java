package gambrel.files.mail;

import gambrel.trade.sending.Reply;
import gambrel.trade.sending.SentState;
import java.util.Optional;

/**
 * What became of a message that was handed to the server.
 *
 * @param state taken, refused, or not known
 * @param reply why it was refused; empty if it was not
 */
public record HandOver(SentState state, Optional<Reply> reply) {}
