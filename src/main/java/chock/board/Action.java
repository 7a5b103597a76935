package chock.board;

import io.javalin.security.RouteRole;
import java.util.EnumSet;
import java.util.Set;

/** What can be done at the board, and who may. Every route names one; a route that names none is open to nobody. */
enum Action implements RouteRole {
    /** Seeing that the board runs, signing in, reading how the pages look, verifying a sign-off. */ ENTER(EnumSet.noneOf(Role.class)),
    /** Reading machines, verdicts and records. */ READ(EnumSet.allOf(Role.class)),
    /** Writing entries in one's own name. */ WRITE_ENTRY(EnumSet.allOf(Role.class)),
    /** Changing one's own password, signing out. */ OWN_ACCOUNT(EnumSet.allOf(Role.class)),
    /** Taking a record file in. */ TAKE_RECORD(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Changing gates sought, instruments, maker's figures, claims. */ CHANGE_SHEET(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Reading a figure after somebody else, and saying what was read. */ SECOND(EnumSet.allOf(Role.class)),
    /** Signing a release, with one's own key. */ SIGN(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Reading what was signed, refused and voided, and whose keys were believed. */ READ_LEDGER(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Trying a limit of the house on every machine, which keeps the board busy. */ TRY_LIMIT(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Reading who did what. */ READ_JOURNAL(EnumSet.of(Role.INSPECTOR, Role.LEAD)),
    /** Taking all records out at once. */ EXPORT_ALL(EnumSet.of(Role.LEAD)),
    /** Reading how the program fares. */ READ_METRICS(EnumSet.of(Role.LEAD)),
    /** Adding people, changing their role, letting them in no more. */ MANAGE_ACCOUNTS(EnumSet.of(Role.LEAD));

    private final Set<Role> allowed;

    Action(Set<Role> allowed) {
        this.allowed = allowed;
    }

    /** Nobody has to be signed in for it. */
    boolean open() {
        return this == ENTER;
    }

    boolean allows(Role role) {
        return open() || allowed.contains(role);
    }
}
