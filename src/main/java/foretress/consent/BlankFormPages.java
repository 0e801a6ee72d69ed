package foretress.consent;

import foretress.assessment.Service;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.ledger.ByStaff;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.BookedService;
import foretress.visit.Visit;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** The desk prints a visit's questions blank, for a client who would rather not answer on a screen. It tells nothing of any answer. */
@Path("/desk/visits/{id}/paper-form")
public class BlankFormPages {
    private final ByStaff byStaff;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Clock clock;

    BlankFormPages(Knowledge knowledge, Menu menu, Clock clock, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.knowledge = knowledge;
        this.menu = menu;
        this.clock = clock;
    }

    @GET
    public Response print(@RestPath String id) {
        Visit visit = found(id);
        byStaff.looked("questions printed blank", visit.id);
        Salon salon = Salon.the();
        byte[] form = BlankForm.print(asked(visit, salon), PaperSize.valueOf(salon.paperSize.name()), clock.instant());
        return Response.ok(form, "application/pdf").header("Content-Disposition", "inline; filename=\"questions.pdf\"")
            .build();
    }

    private static Visit found(String id) {
        try {
            return Visit.<Visit>findByIdOptional(UUID.fromString(id)).orElseThrow(NotFoundException::new);
        } catch (IllegalArgumentException notAnId) {
            throw new NotFoundException();
        }
    }

    private BlankForm.Asked asked(Visit visit, Salon salon) {
        Words words = knowledge.words(visit.client.language);
        var particulars = new ConsentInput.Salon(salon.name, salon.address, salon.town, salon.phone, salon.email, "",
            salon.urgentNumber);
        Notice.Terms terms = Notice.Terms.of(knowledge.policy(salon.jurisdiction));
        Notice notice = Notice.of(words.language(), particulars, terms, ConsentWords.in(words.language()));
        var booked = new ConsentInput.Visit(visit.id, visit.startsThere(),
            Staff.nameOf(visit.stylistId),
            visit.services.stream().map(service -> menu.name(service.serviceId, words)).toList());
        return new BlankForm.Asked(visit.client.language, particulars, visit.client.fullName(), booked, notice,
            knowledge.questionnaire(), words, chemistries(visit));
    }

    private Set<String> chemistries(Visit visit) {
        return visit.services.stream().flatMap(booked -> service(booked).chemistries().stream())
            .collect(Collectors.toSet());
    }

    private Service service(BookedService booked) {
        return menu.service(booked.serviceId)
            .orElseThrow(() -> new IllegalStateException("knowledge no longer has the service " + booked.serviceId))
            .keeping(booked.stepIds());
    }
}
