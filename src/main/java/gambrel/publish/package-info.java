/** The output folder: one writer at a time, and every night either whole or not at all. */
package gambrel.publish;
