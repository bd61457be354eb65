package gambrel.trade.shop;

import java.time.OffsetDateTime;

/**
 * An entry of the bench book: the values of cells that a scale leaves blank for some time.
 *
 * @param scale the scale
 * @param from first moment, included
 * @param to last moment, included
 * @param body the body, or empty
 * @param batch the batch, or empty
 * @param customer the customer, or empty
 * @param boner the boner, or empty
 */
public record BenchEntry(
    String scale,
    OffsetDateTime from,
    OffsetDateTime to,
    String body,
    String batch,
    String customer,
    String boner) {}
