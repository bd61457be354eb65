/** How fast pieces are boned, read from block weighings. */
package gambrel.insight.month.pace;
