package foretress.bench;

/** The longest hair, drawn gently straight, in whole cm: from 1 to 300. */
public record BenchLengthBody(int cm) {
    public static final int SHORTEST = 1;
    public static final int LONGEST = 300;

    public BenchLengthBody {
        if (cm < SHORTEST || cm > LONGEST) {
            throw new IllegalArgumentException("not a length of hair: %d cm".formatted(cm));
        }
    }
}
