package foretress.web;

/** What can go wrong between a browser and us, each with the words {@code problem_…_title} and {@code problem_…_do}. */
public enum Problem {
    UNREADABLE, REFUSED, SIGN_IN, FORBIDDEN, NOT_FOUND, METHOD, CONFLICT, GONE, TOO_LARGE, TOO_MANY, NO_SPACE, OURS;

    /** The words for a status; whatever is not known is, by its first digit, the other side's or ours. */
    public static Problem of(int status) {
        return switch (status) {
            case 401 -> SIGN_IN;
            case 403 -> FORBIDDEN;
            case 404 -> NOT_FOUND;
            case 405, 406, 415 -> METHOD;
            case 409, 412 -> CONFLICT;
            case 410 -> GONE;
            case 413, 414, 431 -> TOO_LARGE;
            case 422 -> UNREADABLE;
            case 429, 503 -> TOO_MANY;
            case 507 -> NO_SPACE;
            default -> status >= 500 ? OURS : REFUSED;
        };
    }

    String title(ClientWords say) {
        return switch (this) {
            case UNREADABLE -> say.problem_unreadable_title();
            case REFUSED -> say.problem_refused_title();
            case SIGN_IN -> say.problem_sign_in_title();
            case FORBIDDEN -> say.problem_forbidden_title();
            case NOT_FOUND -> say.problem_not_found_title();
            case METHOD -> say.problem_method_title();
            case CONFLICT -> say.problem_conflict_title();
            case GONE -> say.problem_gone_title();
            case TOO_LARGE -> say.problem_too_large_title();
            case TOO_MANY -> say.problem_too_many_title();
            case NO_SPACE -> say.problem_no_space_title();
            case OURS -> say.problem_ours_title();
        };
    }

    String whatToDo(ClientWords say) {
        return switch (this) {
            case UNREADABLE -> say.problem_unreadable_do();
            case REFUSED -> say.problem_refused_do();
            case SIGN_IN -> say.problem_sign_in_do();
            case FORBIDDEN -> say.problem_forbidden_do();
            case NOT_FOUND -> say.problem_not_found_do();
            case METHOD -> say.problem_method_do();
            case CONFLICT -> say.problem_conflict_do();
            case GONE -> say.problem_gone_do();
            case TOO_LARGE -> say.problem_too_large_do();
            case TOO_MANY -> say.problem_too_many_do();
            case NO_SPACE -> say.problem_no_space_do();
            case OURS -> say.problem_ours_do();
        };
    }
}
