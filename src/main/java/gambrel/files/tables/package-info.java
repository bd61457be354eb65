/** The data files as tables. */
package gambrel.files.tables;
