/**
 * View records: what templates print, as final text. A composer makes a view and one template reads
 * it, so its lists are not copied; the composer does not change them afterwards.
 */
package gambrel.pages.views;
