/** The output folder: lock, journal, staged files, renames. */
package gambrel.files.publish;
