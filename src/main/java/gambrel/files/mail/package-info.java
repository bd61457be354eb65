/** Messages, and the mail server that takes them (Jakarta Mail). */
package gambrel.files.mail;
