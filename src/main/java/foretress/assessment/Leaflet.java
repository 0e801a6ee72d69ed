package foretress.assessment;

/**
 * What the maker's leaflet asks of a skin test.
 *
 * @param waitHours hours on the physical clock from applying to reading; 0 when the leaflet names none
 */
public record Leaflet(int waitHours, Validity validity) {
    public Leaflet {
        if (waitHours < 0) {
            throw new IllegalArgumentException("a wait of %d hours".formatted(waitHours));
        }
    }
}
