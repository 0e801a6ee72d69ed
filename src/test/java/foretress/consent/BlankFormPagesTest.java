package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
class BlankFormPagesTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;

    @BeforeEach
    void open() {
        salon.open();
    }

    @Test
    @DisplayName("D11: the desk prints the questions of a visit for whoever refuses the screen")
    void theDeskPrintsTheForm() {
        UUID visit = make.visit(LocalDate.of(1990, 4, 3));
        Walker desk = salon.as("sanna").open("/desk/visits/" + visit);
        assertThat(desk.page().select("a[href=/desk/visits/" + visit + "/paper-form]")).hasSize(1);
        Response form = desk.open("/desk/visits/" + visit + "/paper-form").expect(200).response();
        assertThat(form.contentType()).startsWith("application/pdf");
        assertThat(form.header("Cache-Control")).contains("no-store");
        assertThat(Read.plain(Read.body(form.asByteArray()))).contains("Questionsbeforeyourvisit",
            "Hashaircoloureverhurt");
    }

    @Test
    void aVisitThatIsNotOnFileHasNoForm() {
        salon.as("sanna").open("/desk/visits/" + UUID.randomUUID() + "/paper-form").expect(404);
        salon.as("sanna").open("/desk/visits/none/paper-form").expect(404);
    }
}
