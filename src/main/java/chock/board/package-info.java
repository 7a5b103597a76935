/** The board: every machine of the shop, what is holding it, from the bench and from the office. */
package chock.board;
