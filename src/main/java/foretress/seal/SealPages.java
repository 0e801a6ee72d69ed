package foretress.seal;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;

/** The certificates by which anybody can check a paper of this salon; they say nothing but its name. */
@Path("/seal.pem")
public class SealPages {
    private final Seals seals;

    SealPages(Seals seals) {
        this.seals = seals;
    }

    @GET
    public Response certificates() {
        return Response.ok(seals.certificatesAsText()).type("application/x-pem-file")
            .header("Content-Disposition", "attachment; filename=\"seal.pem\"").build();
    }
}
