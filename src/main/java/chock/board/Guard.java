package chock.board;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import io.javalin.security.RouteRole;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Set;

/** Stands before every route: who asks, whether they may, and whether they meant it. */
final class Guard {
    static final String VISITOR = "visitor";
    private static final int LARGEST_FORM = 100_000;
    private static final long MOST_READ_AWAY = 40_000_000;
    static final String CSP = "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final People people;
    private final Address address;

    Guard(People people, Address address) {
        this.people = people;
        this.address = address;
    }

    /** Before anything else, also before what is not there. */
    void headers(Context ctx) {
        ctx.header("Content-Security-Policy", CSP).header("X-Content-Type-Options", "nosniff").header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin").header("Cross-Origin-Resource-Policy", "same-origin").header("Cache-Control", "no-store")
                .header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        if (address.secure()) {
            ctx.header("Strict-Transport-Security", "max-age=31536000");
        }
        boolean photo = ctx.path().matches("(/api)?/machines/[^/]+/photos?");
        if (ctx.req().getContentLengthLong() > (photo ? Board.LARGEST_PHOTO : Board.LARGEST)) {
            throw new Refusal(413, photo ? "A photo of at most sixteen million bytes is taken." : "At most five million bytes are taken.");
        }
        if (ctx.isFormUrlencoded() && ctx.req().getContentLengthLong() > LARGEST_FORM) {
            throw new Refusal(413, "More was typed than a form takes.");
        }
        String host = ctx.header("Host");
        if (host == null || !address.hosts(ctx.req().getLocalPort()).contains(host)) {
            throw new Refusal(421, "This board is not reached under that name.");
        }
    }

    /** Who is cut off while sending sees a broken connection, and not why. */
    static void readAway(Context ctx) {
        byte[] some = new byte[65_536];
        try {
            InputStream in = ctx.req().getInputStream();
            long left = MOST_READ_AWAY;
            for (int n = in.read(some); n >= 0 && left > 0; n = in.read(some)) {
                left -= n;
            }
        } catch (IOException e) {
            // They hung up; there is nobody to tell.
        }
    }

    /** Before a route that is there. */
    void admit(Context ctx) {
        Set<RouteRole> named = ctx.routeRoles();
        if (named.size() != 1) {
            throw new IllegalStateException("a route names no action: " + ctx.path());
        }
        Action action = (Action) named.iterator().next();
        boolean writes = switch (ctx.method().name()) {
            case "GET", "HEAD" -> false;
            default -> true;
        };
        if (writes) {
            refuseStrangers(ctx);
        }
        if (ctx.path().equals("/health") || ctx.path().equals("/ready")) {
            // They say how the board fares also when the store, which knows who asks, does not answer.
            return;
        }
        people.holder(ctx.cookie(cookieName())).ifPresent(visitor -> ctx.attribute(VISITOR, visitor));
        if (action.open()) {
            return;
        }
        Visitor visitor = visitor(ctx);
        if (visitor == null) {
            throw new Refusal(401, "Sign in first.");
        }
        if (!visitor.mayRead() && action != Action.OWN_ACCOUNT) {
            throw new Refusal(403, "Set a password of your own first.");
        }
        if (!visitor.may(action)) {
            throw new Refusal(403, "This is not for a " + visitor.role().word() + " to do.");
        }
        if (writes && !same(visitor.form(), ctx.header("X-Form-Token") != null ? ctx.header("X-Form-Token") : ctx.formParam("form"))) {
            throw new Refusal(403, "This form was not made for you, or you have signed in anew since. Go back, load the page again, and send it once more.");
        }
    }

    /** A browser says where a form came from; what came from elsewhere is not done. */
    private void refuseStrangers(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        String origin = ctx.header("Origin");
        boolean strange = site != null && !site.equals("same-origin") && !site.equals("none");
        if (origin != null) {
            strange |= !own(origin, ctx);
        }
        if (strange) {
            throw new Refusal(403, "This was sent from another site.");
        }
    }

    private boolean own(String origin, Context ctx) {
        String scheme = address.secure() ? "https" : "http";
        try {
            URI from = URI.create(origin);
            return scheme.equals(from.getScheme()) && from.getAuthority() != null && from.getAuthority().equals(ctx.header("Host"));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static boolean same(String wanted, String given) {
        return given != null && MessageDigest.isEqual(wanted.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }

    static Visitor visitor(Context ctx) {
        return ctx.attribute(VISITOR);
    }

    private String cookieName() {
        return address.secure() ? "__Host-chock" : "chock";
    }

    void hand(Context ctx, People.SignedIn signedIn) {
        ctx.cookie(new Cookie(cookieName(), signedIn.cookie(), "/", -1, address.secure(), true, null, SameSite.STRICT));
    }

    void takeBack(Context ctx) {
        ctx.cookie(new Cookie(cookieName(), "", "/", 0, address.secure(), true, null, SameSite.STRICT));
    }

    /** The caller's address: as the proxy in front names it, where there is one. */
    String caller(Context ctx) {
        String forwarded = ctx.header("X-Forwarded-For");
        if (!address.behindProxy() || forwarded == null) {
            return ctx.ip();
        }
        String[] hops = forwarded.split(",");
        return hops[hops.length - 1].strip();
    }
}
