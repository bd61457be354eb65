/** View records: what templates print, as final text. */
package gambrel.pages.views;
