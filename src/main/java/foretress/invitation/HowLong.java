package foretress.invitation;

/** How long answering takes, told at the door; the room that asks the questions knows. */
public interface HowLong {
    /** Whole minutes, 1 or more, for somebody with nothing to tell, in this language; the same whatever is booked. */
    int minutes(String language);
}
