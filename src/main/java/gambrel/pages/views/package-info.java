/** View records: what templates print, all text final. */
package gambrel.pages.views;
