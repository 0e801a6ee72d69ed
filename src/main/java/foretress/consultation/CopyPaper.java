package foretress.consultation;

import foretress.consent.ConsentCopies.Copy;
import foretress.consent.ConsentText.Line;
import foretress.consent.Consents;
import foretress.consent.KeptEvidence;
import foretress.consent.PaperSize;
import foretress.consent.RecordPaper;
import foretress.consent.RecordText;
import foretress.consent.RecordText.Section;
import foretress.consent.SignedConsent;
import foretress.salon.Salon;
import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The copy of a signed consent in the words of staff, on paper: that nobody signed it stands first, and what was signed is named by its hash. */
@RequestScoped
class CopyPaper {
    private final Consents consents;
    private final StylistWords say;

    CopyPaper(Consents consents, StylistWords say) {
        this.consents = consents;
        this.say = say;
    }

    /** PDF/A-2b. */
    byte[] print(Visit visit, SignedConsent signed, Copy copy) {
        return RecordPaper.print(text(visit.client.fullName(), signed, copy),
            PaperSize.valueOf(Salon.the().paperSize.name()), signed.signedAt());
    }

    private RecordText text(String client, SignedConsent signed, Copy copy) {
        Salon salon = Salon.the();
        List<Section> sections = new ArrayList<>(List.of(about(client, signed, copy)));
        copy.parts().forEach(part -> sections.add(new Section(part.heading(), part.lines(), Optional.empty())));
        return new RecordText(copy.language(), say.copy_title(copy.title()), salon.name,
            salon.address + ", " + salon.town, List.of(say.copy_not_signed()), client, say.copy_foot(client),
            say.copy_page("{page}", "{pages}"), List.of(), sections);
    }

    /** What this paper is, before anything of what it says. */
    private Section about(String client, SignedConsent signed, Copy copy) {
        KeptEvidence evidence = consents.evidence(signed);
        Locale locale = Locale.forLanguageTag(copy.language());
        String read =
            Locale.forLanguageTag(evidence.how().evidence().text().language()).getDisplayLanguage(locale);
        String when = new DateWords(locale).dateAndHour(signed.signedAt().atZone(evidence.how().evidence().zone()));
        return new Section(say.copy_about(), List.of(
            new Line.Paragraph(say.copy_not_signed()),
            new Line.Paragraph(say.copy_signed(client, read, when)),
            new Line.Paragraph(say.copy_free()),
            new Line.Pair(say.copy_hash(), evidence.pdfSha256())), Optional.empty());
    }
}
