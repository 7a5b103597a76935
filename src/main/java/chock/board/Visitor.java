package chock.board;

import chock.board.store.Accounts.Account;

/**
 * Who is signed in.
 *
 * @param form what every form of theirs must bring along
 * @param token digest of what their browser holds
 */
record Visitor(Account account, Role role, String form, String token) {
    boolean may(Action action) {
        return action.allows(role);
    }

    boolean mayRead() {
        return !account.mustChange();
    }
}
