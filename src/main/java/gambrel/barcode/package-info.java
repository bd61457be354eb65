/** GS1 element strings and in-store numbers as scales write them; no file, no clock. */
package gambrel.barcode;
