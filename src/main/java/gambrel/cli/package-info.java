/** The command line. The only package that knows of options, streams and exit codes. */
package gambrel.cli;
