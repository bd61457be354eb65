/** GS1 element strings and in-store numbers. */
package gambrel.files.barcode;
