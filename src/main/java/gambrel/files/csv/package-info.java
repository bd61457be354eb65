/** Delimited text and properties files: lines, records, cells, dates. */
package gambrel.files.csv;
