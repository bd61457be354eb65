package gambrel.trade.rows;

import gambrel.trade.shop.Correction;

/**
 * A correction that changed one row.
 *
 * @param row the row as the export has it
 * @param was the text of the field before this correction
 * @param correction the new value, who decided and why
 */
public record AppliedCorrection(ExportRow row, String was, Correction correction) {}
