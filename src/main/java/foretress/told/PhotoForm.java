package foretress.told;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.UUID;

/** A form by which a photo was sent. The photo may be taken back or replaced; its form stays used. */
@Entity
@Table(name = "photo_form")
class PhotoForm extends Stored {
    /** Where the code of what it is of is kept. */
    static final String FORM_OF = "photo_form.form_of";

    @Column(name = "visit_id") private UUID visitId;
    private UUID submission;
    @Column(name = "form_of", length = 64) private String formOf;

    protected PhotoForm() {}

    /** @param formOf what it is of, as a code */
    PhotoForm(UUID visitId, UUID submission, String formOf) {
        super(visitId, submission, formOf);
        this.visitId = visitId;
        this.submission = submission;
        this.formOf = formOf;
    }

    static boolean isUsed(UUID submission) {
        return count("submission", submission) > 0;
    }

    /** How many were used for this visit and what this code stands for. */
    static long used(UUID visitId, String formOf) {
        return count("visitId = ?1 and formOf = ?2", visitId, formOf);
    }
}
