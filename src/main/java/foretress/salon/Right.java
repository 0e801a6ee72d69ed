package foretress.salon;

import java.util.Set;

/**
 * Who may use one route.
 *
 * @param route method and path template: {@code GET /desk/visits/{id}}
 * @param scope what a program's token must be for; blank when any token will do
 */
record Right(String route, Kind kind, Set<Role> roles, String scope) {
    enum Kind { ANYBODY, GUEST, STAFF, PROGRAM }

    /** Open to everybody, signed in or not. */
    static Right anybody(String route) {
        return new Right(route, Kind.ANYBODY, Set.of(), "");
    }

    /** Open to a client who came through the door of an invitation. */
    static Right guest(String route) {
        return new Right(route, Kind.GUEST, Set.of(), "");
    }

    static Right staff(String route, Role... roles) {
        return new Right(route, Kind.STAFF, Set.of(roles), "");
    }

    /** Open to a program with a token for this; no cookie opens it. */
    static Right program(String route, String scope) {
        return new Right(route, Kind.PROGRAM, Set.of(), scope);
    }

    boolean allows(Role role) {
        return roles.contains(role);
    }
}
