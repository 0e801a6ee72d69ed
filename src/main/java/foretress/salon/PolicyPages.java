package foretress.salon;

import foretress.assessment.Policy;
import foretress.assessment.Source;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Sha256;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Meanwhile;
import foretress.web.Mistakes;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.RestQuery;

/** The owner makes the salon's rules stricter; a laxer figure is refused with the one that holds, what kind of rule it is and where it stands. */
@Path("/policy")
@Produces(MediaType.TEXT_HTML)
public class PolicyPages {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,4}");

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PolicyPage(List<Field> fields, String version, boolean kept, Mistakes mistakes)
        implements TemplateInstance {}

    /** One figure: what holds without the salon's own, in words, and what the owner put in; some are a yes (1) or a no (0). */
    public record Field(String name, String label, String hint, String value, boolean yesOrNo) {}

    private final Policies policies;
    private final Knowledge knowledge;
    private final SettingsWords words;
    private final SourceKinds kinds;
    private final Meanwhile meanwhile;
    private final Who who;

    PolicyPages(Policies policies, Knowledge knowledge, SettingsWords words, SourceKinds kinds, Meanwhile meanwhile,
        Who who) {
        this.policies = policies;
        this.knowledge = knowledge;
        this.words = words;
        this.kinds = kinds;
        this.meanwhile = meanwhile;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestQuery String kept) {
        return page(written(), kept != null, new Mistakes());
    }

    /** The form as it would be filled in to set these figures again. */
    private Form written() {
        Map<String, Integer> own = policies.own();
        var fields = new MultivaluedHashMap<String, String>();
        for (Setting setting : Setting.values()) {
            fields.putSingle(setting.figure(),
                Optional.ofNullable(own.get(setting.figure())).map(String::valueOf).orElse(""));
        }
        fields.putSingle(Meanwhile.VERSION, Sha256.of(new TreeMap<>(own).toString()));
        return new Form(fields);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        Map<Setting, Optional<Integer>> read = read(form, mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, false, mistakes));
        }
        Form now = written();
        if (meanwhile.isStale(form, now)) {
            return FormAgain.with(page(meanwhile.tell(form, now, "figures", this::said, mistakes), false, mistakes));
        }
        QuarkusTransaction.requiringNew().run(() -> policies.set(read, who.staff().id));
        return Response.seeOther(URI.create("/policy?kept")).build();
    }

    private Map<Setting, Optional<Integer>> read(Form form, Mistakes mistakes) {
        Map<Setting, Optional<Integer>> read = new EnumMap<>(Setting.class);
        Arrays.stream(Setting.values())
            .forEach(setting -> read.put(setting, figure(setting, form.one(setting.figure()), mistakes)));
        return read;
    }

    private Optional<Integer> figure(Setting setting, String typed, Mistakes mistakes) {
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        boolean number = NUMBER.matcher(typed).matches() && Integer.parseInt(typed) <= setting.most();
        if (!mistakes.expect(number, setting.figure(), words.policy_not_a_figure(label(setting), setting.most()))) {
            return Optional.empty();
        }
        int figure = Integer.parseInt(typed);
        int holds = policies.place().figure(setting.figure());
        mistakes.expect(!setting.laxerThan(figure, holds), setting.figure(), laxer(setting, figure, holds));
        return Optional.of(figure);
    }

    private String laxer(Setting setting, int figure, int holds) {
        return words.policy_laxer(label(setting), typed(setting, figure), said(setting, holds), printed(setting));
    }

    private String said(String figure, String value) {
        return typed(Setting.of(figure), Integer.parseInt(value));
    }

    private TemplateInstance page(Form form, boolean kept, Mistakes mistakes) {
        Policy place = policies.place();
        List<Field> fields = Arrays.stream(Setting.values()).map(setting -> new Field(setting.figure(), label(setting),
            hint(setting, place.figure(setting.figure())), form.one(setting.figure()), setting.isYesOrNo())).toList();
        return new PolicyPage(fields, form.one(Meanwhile.VERSION), kept, mistakes);
    }

    private String label(Setting setting) {
        return switch (setting) {
            case SKIN_TEST_WAIT_HOURS -> words.policy_skin_test_wait_hours();
            case SKIN_TEST_VALIDITY_MONTHS -> words.policy_skin_test_validity_months();
            case INCOMPATIBILITY_TEST_HOURS -> words.policy_incompatibility_test_hours();
            case MINIMUM_AGE -> words.policy_minimum_age();
            case GUARDIAN_BELOW_AGE -> words.policy_guardian_below_age();
            case PERMED_HAIR_WEEKS -> words.policy_permed_hair_weeks();
            case CHEMOTHERAPY_MONTHS -> words.policy_chemotherapy_months();
            case RADIOTHERAPY_WEEKS -> words.policy_radiotherapy_weeks();
            case RELAXER_WEEKS -> words.policy_relaxer_weeks();
            case KERATIN_WEEKS -> words.policy_keratin_weeks();
            case PERM_ALLERGEN_MONTHS -> words.policy_perm_allergen_months();
            case CHEMOTHERAPY_REGROWN_CM -> words.policy_chemotherapy_regrown_cm();
            case RETINOID_MONTHS -> words.policy_retinoid_months();
            case STEROID_LOW_DOSE_MG -> words.policy_steroid_low_dose_mg();
            case STING_IS_A_REACTION -> words.policy_sting_is_a_reaction();
            case LETTER_COUNTS -> words.policy_letter_counts();
            case LASH_TINT_ALLOWED -> words.policy_lash_tint_allowed();
        };
    }

    private String said(Setting setting, int figure) {
        if (setting == Setting.SKIN_TEST_VALIDITY_MONTHS && figure == 0) {
            return words.policy_each_application();
        }
        if (setting == Setting.CHEMOTHERAPY_REGROWN_CM && figure == 0) {
            return words.policy_by_months_alone();
        }
        if (setting.isYesOrNo()) {
            return typed(setting, figure);
        }
        return setting.isMoreStricter() ? words.policy_at_least(figure) : words.policy_at_most(figure);
    }

    private String typed(Setting setting, int figure) {
        return !setting.isYesOrNo() ? Integer.toString(figure) : figure == 1 ? words.policy_yes() : words.policy_no();
    }

    /** What holds without a figure of the salon's own, and who says so. */
    private String hint(Setting setting, int figure) {
        return words.policy_without(said(setting, figure), printed(setting));
    }

    /** Whether a law, a maker, a trade body or this house says so, and where. */
    private String printed(Setting setting) {
        Source source = knowledge.ruleSet().sources().get(policies.place().source(setting.figure()));
        return kinds.of(source.kind()) + ": " + source.title() + source.place().map(place -> ", " + place).orElse("");
    }
}
