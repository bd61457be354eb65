/** The command line: options, streams and exit codes. */
package gambrel.cli;
