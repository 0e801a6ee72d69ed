package foretress.bench;

import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.web.Form;
import foretress.web.Mistakes;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.ForbiddenException;
import java.util.OptionalLong;

/** Looks a form through that says that something at the bench was entered in error. */
@RequestScoped
class BenchStruck {
    static final int LONGEST_REASON = 500;

    private final ProveAgain proveAgain;
    private final Who who;
    private final BenchWords say;

    BenchStruck(ProveAgain proveAgain, Who who, BenchWords say) {
        this.proveAgain = proveAgain;
        this.who = who;
        this.say = say;
    }

    /**
     * @param why the reason's field
     * @param password the password's field in the page; its name is always "password"
     * @return how long to wait before the next try, in seconds; empty unless there were too many
     */
    OptionalLong check(BenchStrike may, Form form, String why, String password, Mistakes mistakes) {
        if (may == BenchStrike.NO) {
            throw new ForbiddenException("only who made it, or the owner");
        }
        mistakes.expect(!may.isOwners(), why, say.strike_owner());
        mistakes.expect(!form.one(why).isEmpty(), why, say.strike_why_missing());
        mistakes.expect(form.one(why).length() <= LONGEST_REASON, why, say.strike_why_long(LONGEST_REASON));
        return may.isProved() && mistakes.isEmpty() ? proved(form, password, mistakes) : OptionalLong.empty();
    }

    private OptionalLong proved(Form form, String field, Mistakes mistakes) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), form.exact("password"));
        OptionalLong seconds = proof.seconds();
        mistakes.expect(proof.proved(), field,
            seconds.isPresent() ? say.strike_password_wait(seconds.getAsLong()) : say.strike_password_wrong());
        return seconds;
    }
}
