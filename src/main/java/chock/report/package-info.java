/** What people and scripts read: text, JSON, HTML. Decides nothing. */
package chock.report;
