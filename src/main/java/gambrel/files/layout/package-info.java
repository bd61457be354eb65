/** How one make of export is read. */
package gambrel.files.layout;
