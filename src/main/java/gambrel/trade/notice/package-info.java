/**
 * What is wrong in a shop's data: a code, a place and named values. Words are put to them by {@link
 * gambrel.trade.notice.NoticeWords}.
 */
package gambrel.trade.notice;
