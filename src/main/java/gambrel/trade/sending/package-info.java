/** Mailing of issued statements: settings, what was sent, and what is to be sent. */
package gambrel.trade.sending;
