package gambrel.trade.shop;

import java.time.OffsetDateTime;

/**
 * What a scale leaves blank between two moments, both included.
 *
 * @param scale the scale
 * @param from first moment
 * @param to last moment
 * @param body or empty
 * @param batch or empty
 * @param customer or empty
 * @param boner or empty
 */
public record BenchEntry(
    String scale,
    OffsetDateTime from,
    OffsetDateTime to,
    String body,
    String batch,
    String customer,
    String boner) {}
