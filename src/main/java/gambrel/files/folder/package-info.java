/** The tables and settings of a shop folder. */
package gambrel.files.folder;
