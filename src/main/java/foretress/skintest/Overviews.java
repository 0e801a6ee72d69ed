package foretress.skintest;

import foretress.assessment.Finding;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Salon;
import foretress.salon.SettingsWords;
import foretress.visit.Moments;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.web.StaffLanguage;
import jakarta.inject.Singleton;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a visit's skin test into the words of the stylist's page. */
@Singleton
class Overviews {
    private final TestStore tests;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final PlannedProducts planned;
    private final TestVisits shortVisits;
    private final TestInWords made;
    private final Knowledge knowledge;
    private final SkinWords say;
    private final SettingsWords settings;
    private final StaffLanguage staff;
    private final Moments moments;

    Overviews(TestStore tests, SkinTestGate gate, TestConsent consent, PlannedProducts planned, TestVisits shortVisits,
        TestInWords made, Knowledge knowledge, SkinWords say, SettingsWords settings, StaffLanguage staff,
        Moments moments) {
        this.tests = tests;
        this.gate = gate;
        this.consent = consent;
        this.planned = planned;
        this.shortVisits = shortVisits;
        this.made = made;
        this.knowledge = knowledge;
        this.say = say;
        this.settings = settings;
        this.staff = staff;
        this.moments = moments;
    }

    Overview of(Visit visit) {
        SkinTestGate.State state = gate.of(visit);
        Optional<PlannedProducts.Planned> product = planned.of(visit.id);
        Optional<TestVisit> shortVisit = TestVisit.standing(visit.id);
        return new Overview(visit.id.toString(), visit.client.fullName(), moment(visit.startsAt, visit),
            product.map(one -> one.line().name + ", " + one.shade()).orElse(""), missing(visit, state), state.mustNot(),
            because(state),
            state.missing().isEmpty() && product.filter(one -> consent.signed(visit, one)).isPresent(),
            shortVisit.map(one -> moment(one.startsAt(), visit)).orElse(""),
            shortVisit.isPresent() && shortVisits.tufts(visit),
            tests.ofClient(visit.client.id).stream().map(told -> made.of(told, visit)).toList(), papers(visit));
    }

    /** The number to call where the salon is. */
    String emergency() {
        return knowledge.policy(Salon.the().jurisdiction).emergencyNumber();
    }

    private List<Overview.Step> missing(Visit visit, SkinTestGate.State state) {
        return state.missing().stream().filter(what -> what != SkinTestGate.Missing.MUST_NOT)
            .map(what -> switch (what) {
                case OVER -> new Overview.Step(say.test_visit_over(), "", "");
                case ANSWERS ->
                    new Overview.Step(say.test_needs_answers(), "/desk/visits/" + visit.id, say.test_to_link());
                case REFUSED ->
                    new Overview.Step(say.test_refused(), "/visits/" + visit.id + "/refused", say.test_refused_link());
                case SIGNATURE ->
                    new Overview.Step(say.test_needs_signature(), "/desk/visits/" + visit.id, say.test_to_link());
                default -> new Overview.Step(say.test_needs_product(), "/desk/visits/" + visit.id + "/product",
                    settings.planned_change());
            }).toList();
    }

    private List<Overview.Because> because(SkinTestGate.State state) {
        return state.because().stream().filter(Finding::speaks).map(this::because).toList();
    }

    private Overview.Because because(Finding finding) {
        Words.FindingWords words = words().finding(finding.ruleId(), finding.onlyIfUnknown());
        return new Overview.Because(finding.weight(), word(finding.weight()), words.title(), words.do_());
    }

    private String word(Weight weight) {
        return weight == Weight.PREVENTS ? say.test_prevents()
            : weight == Weight.TEST_FIRST ? say.test_first() : say.test_restricts();
    }

    String sign(SkinSign sign) {
        return made.sign(sign);
    }

    private List<Overview.Paper> papers(Visit visit) {
        List<Overview.Paper> papers = new ArrayList<>();
        consent.papers(visit.id).forEach(paper -> papers.add(
            new Overview.Paper(paper.versionNo(), say.test_paper(paper.versionNo(), moment(paper.signedAt(), visit)))));
        return papers;
    }

    private String moment(Instant at, Visit visit) {
        return moments.in(visit.zone()).moment(at);
    }

    private Words words() {
        return knowledge.words(staff.tag());
    }
}
