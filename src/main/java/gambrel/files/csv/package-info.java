/** Delimited text files: lines, records, cells and the dates in them. */
package gambrel.files.csv;
