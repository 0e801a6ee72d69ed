package foretress.salon;

/** What a member of staff is here for; {@link Rights} says what each may do. */
public enum Role {
    STYLIST, DESK, OWNER
}
