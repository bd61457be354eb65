/** Reads the shop folder and the exports into plain records; the only place that knows CSV. */
package gambrel.intake;
