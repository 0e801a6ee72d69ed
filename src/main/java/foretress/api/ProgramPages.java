package foretress.api;

import foretress.knowledge.Knowledge;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.web.DateWords;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** The owner's list of programs that may ask: make a token, see which are used, revoke one. */
@Path("/programs")
@Produces(MediaType.TEXT_HTML)
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
public class ProgramPages {
    static final List<Integer> DAYS = List.of(30, 90, 365);
    private static final int LONGEST_NAME = 100;

    /** @param made the token made just now; shown this once */
    @CheckedTemplate(basePath = "api", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ProgramsPage(List<Row> rows, List<Purpose> purposes, List<Integer> days, Form form, Made made,
        Mistakes mistakes) implements TemplateInstance {}

    record Row(UUID id, String name, String purposes, String made, String ends, String used, boolean alive) {}

    record Purpose(String code, String words) {}

    record Made(String name, String token) {}

    private final ProgramTokens tokens;
    private final Who who;
    private final ProgramWords words;
    private final Language language;
    private final Knowledge knowledge;
    private final Clock clock;

    ProgramPages(ProgramTokens tokens, Who who, ProgramWords words, Language language, Knowledge knowledge,
        Clock clock) {
        this.tokens = tokens;
        this.who = who;
        this.words = words;
        this.language = language;
        this.knowledge = knowledge;
        this.clock = clock;
    }

    @GET
    public TemplateInstance list() {
        return page(new Form(new MultivaluedHashMap<>()), null, new Mistakes());
    }

    @POST
    public Response make(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        Set<Scope> scopes = scopes(form);
        Optional<Integer> days = DAYS.stream().filter(d -> form.one("days").equals(d.toString())).findFirst();
        checkName(form.one("program-name"), mistakes);
        mistakes.expect(!scopes.isEmpty(), "scope", words.purpose_missing());
        mistakes.expect(days.isPresent(), "days", words.lasts_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, null, mistakes));
        }
        String token =
            tokens.make(form.one("program-name"), scopes, Duration.ofDays(days.orElseThrow()), who.staff().id);
        var made = new Made(form.one("program-name"), token);
        return Response.status(Response.Status.CREATED)
            .entity(page(new Form(new MultivaluedHashMap<>()), made, new Mistakes())).build();
    }

    /** A form sent twice makes one token: the name is taken by then. */
    private void checkName(String name, Mistakes mistakes) {
        List<ProgramToken> alive = tokens.alive();
        boolean fits =
            mistakes.expect(!name.isEmpty() && name.length() <= LONGEST_NAME, "program-name", words.name_missing());
        if (fits) {
            mistakes.expect(alive.stream().noneMatch(t -> t.name.equalsIgnoreCase(name)), "program-name",
                words.name_taken(name));
            mistakes.expect(alive.size() < ProgramTokens.MOST_ALIVE, "program-name",
                words.too_many(ProgramTokens.MOST_ALIVE));
        }
    }

    private static Set<Scope> scopes(Form form) {
        Set<Scope> chosen = EnumSet.noneOf(Scope.class);
        Arrays.stream(Scope.values()).filter(scope -> form.is("scope", scope.code())).forEach(chosen::add);
        return chosen;
    }

    @POST
    @Path("{id}/revoke")
    public Response revoke(@RestPath UUID id) {
        if (!tokens.revoke(id, who.staff().id)) {
            throw new NotFoundException();
        }
        return Response.seeOther(URI.create("/programs")).build();
    }

    /** The description of the API, for whoever writes the program. */
    @GET
    @Path("openapi")
    @Produces(MediaType.WILDCARD)
    public Response openapi() {
        return Response
            .ok(new OpenApi(new Operations(knowledge)).json().getBytes(java.nio.charset.StandardCharsets.UTF_8))
            .type(MediaType.APPLICATION_JSON_TYPE)
            .header("Content-Disposition", "attachment; filename=\"foretress-openapi.json\"").build();
    }

    private TemplateInstance page(Form form, Made made, Mistakes mistakes) {
        List<Purpose> purposes =
            Arrays.stream(Scope.values()).map(scope -> new Purpose(scope.code(), words(scope))).toList();
        return new ProgramsPage(tokens.all().stream().map(this::row).toList(), purposes, DAYS, form, made, mistakes);
    }

    private Row row(ProgramToken token) {
        String purposes = Arrays.stream(Scope.values()).filter(s -> token.isFor(s.code())).map(this::words)
            .collect(Collectors.joining("; "));
        return new Row(token.id, token.name, purposes, words.made(day(token.madeAt)), ends(token),
            token.lastUsedOn().map(d -> words.used(day(d))).orElseGet(words::never_used),
            token.isAlive(clock.instant()));
    }

    private String ends(ProgramToken token) {
        if (token.isRevoked()) {
            return words.revoked(day(token.revokedAt));
        }
        return token.isAlive(clock.instant()) ? words.ends(day(token.expiresAt)) : words.expired(day(token.expiresAt));
    }

    private String words(Scope scope) {
        return switch (scope) {
            case ASSESS -> words.scope_assess();
            case READ -> words.scope_read();
            case BENCH -> words.scope_bench();
        };
    }

    private String day(Instant moment) {
        return day(moment.atZone(Salon.the().zoneId()).toLocalDate());
    }

    private String day(LocalDate day) {
        return new DateWords(language.locale()).shortDate(day);
    }
}
