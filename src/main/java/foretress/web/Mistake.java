package foretress.web;

/**
 * What has to be put right on a form.
 *
 * @param field id of the field, where the summary's link leads
 * @param text names the thing, the value and the way out, in the reader's language
 */
public record Mistake(String field, String text) {}
