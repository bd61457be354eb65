package gambrel.trade.rows;

import gambrel.trade.shop.Correction;

/**
 * A correction as it was laid over one row.
 *
 * @param row the row as it stands in the export
 * @param was what the field said before
 * @param correction what it says now, and who decided
 */
public record AppliedCorrection(ExportRow row, String was, Correction correction) {}
