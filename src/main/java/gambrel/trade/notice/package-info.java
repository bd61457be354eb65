/**
 * Notices about a shop's data: a code, a place and named values. {@link
 * gambrel.trade.notice.NoticeWords} makes the sentences.
 */
package gambrel.trade.notice;
