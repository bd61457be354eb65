/** Descriptions of makes of export, and the fields that they make of cells. */
package gambrel.files.layout;
