package foretress.rights;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One consent in the four parts of ISO/IEC TS 27560:2023 (6.3.3 to 6.3.7: header, processing, parties, events), with the keys of a
 * Kantara consent receipt 1.1. Which parts and keys there are was taken from a summary of both; how TS 27560 spells its fields inside a
 * part is from memory.
 */
final class ConsentRecord {
    static final String SCHEMA = "foretress.consent-record.1";
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private ConsentRecord() {}

    /** What a consent is for. */
    enum Purpose {
        HOLD_ANSWERS("hold health answers to see which tests come first", "GDPR Art. 9(2)(a) with Art. 6(1)(b)", true,
            List.of("health", "hair", "earlier treatments")),
        SERVICE("carry out the service and its tests as described", "agreement to the service and its risks", true,
            List.of("health", "hair", "signature")),
        SKIN_TEST("carry out the skin test as described", "agreement to the test and its risks", true,
            List.of("health", "signature"));

        private final String text;
        private final String basis;
        private final boolean sensitive;
        private final List<String> data;

        Purpose(String text, String basis, boolean sensitive, List<String> data) {
            this.text = text;
            this.basis = basis;
            this.sensitive = sensitive;
            this.data = data;
        }
    }

    /** Who is asked for consent. @param retentionYears after the last visit */
    record Controller(String name, String address, String email, String phone, String jurisdiction, int retentionYears,
        String policyUrl) {}

    /**
     * What one consent is about.
     *
     * @param id of the record
     * @param person id of the client's record
     * @param notice version and hash of the words agreed to
     */
    record About(String id, String person, Purpose purpose, String language, String noticeVersion, String noticeHash,
        List<String> services) {}

    static ObjectNode of(About about, Controller salon, Optional<String> guardian,
        List<ConsentHistory.Event> events) {
        ObjectNode record = NODE.objectNode();
        record.set("header", NODE.objectNode().put("schema_version", SCHEMA).put("record_id", about.id())
            .put("pii_principal_id", about.person()));
        record.set("processing", processing(about, salon));
        record.set("parties", parties(about, salon, guardian));
        record.set("events", events(about, events));
        record.set("receipt", receipt(about, salon, events));
        return record;
    }

    private static ObjectNode processing(About about, Controller salon) {
        ObjectNode processing = NODE.objectNode();
        processing.set("privacy_notice", NODE.objectNode().put("version", about.noticeVersion())
            .put("sha256", about.noticeHash()).put("language", about.language()));
        processing.put("purpose", about.purpose().text).put("lawful_basis", about.purpose().basis);
        processing.set("pii_information", texts(about.purpose().data.stream()));
        processing.put("collection_method", "questionnaire answered by the client, or by staff from paper")
            .put("storage_location", "the salon's own installation, encrypted")
            .put("retention_period", "at least P%dY after the last visit".formatted(salon.retentionYears()))
            .put("jurisdiction", salon.jurisdiction());
        processing.set("recipients", texts(Stream.of("those who do the hair", "the owner")));
        processing.set("privacy_rights", texts(Stream.of("access", "correction", "restriction", "objection",
            "erasure", "portability", "withdrawal", "complaint")));
        return processing.put("withdrawal_method", "the client's own link, or any word to the salon");
    }

    private static ArrayNode parties(About about, Controller salon, Optional<String> guardian) {
        ArrayNode parties = NODE.arrayNode();
        parties.addObject().put("party_role", "pii controller").put("party_id", "salon").put("party_name", salon.name())
            .put("party_address", salon.address()).put("party_email", salon.email())
            .put("party_phone", salon.phone());
        parties.addObject().put("party_role", "pii principal").put("party_id", about.person());
        guardian.ifPresent(name -> parties.addObject().put("party_role", "guardian").put("party_id", "guardian")
            .put("party_name", name));
        return parties;
    }

    private static ArrayNode events(About about, List<ConsentHistory.Event> events) {
        ArrayNode all = NODE.arrayNode();
        events.forEach(event -> all.addObject().put("event_type", event.kind().code())
            .put("event_time", event.at().toString()).put("event_method", event.how()).put("entity_id", about.person())
            .put("kept_as", event.on()));
        return all;
    }

    private static ObjectNode receipt(About about, Controller salon, List<ConsentHistory.Event> events) {
        ObjectNode receipt = NODE.objectNode().put("version", "KI-CR-v1.1.0").put("jurisdiction", salon.jurisdiction())
            .put("consentTimestamp", events.get(0).at().getEpochSecond()).put("collectionMethod", events.get(0).how())
            .put("consentReceiptID", about.id()).put("language", about.language())
            .put("piiPrincipalId", about.person());
        receipt.putArray("piiControllers").addObject().put("piiController", salon.name())
            .put("contact", salon.name()).put("address", salon.address()).put("email", salon.email())
            .put("phone", salon.phone());
        receipt.put("policyUrl", salon.policyUrl());
        ObjectNode service = receipt.putArray("services").addObject()
            .put("service", String.join(", ", about.services()));
        service.putArray("purposes").addObject().put("purpose", about.purpose().text)
            .put("termination", "withdrawal, or the end of retention").put("thirdPartyDisclosure", false)
            .set("piiCategory", texts(about.purpose().data.stream()));
        receipt.put("sensitive", about.purpose().sensitive);
        receipt.set("spiCat", texts(Stream.of("health")));
        return receipt;
    }

    private static ArrayNode texts(Stream<String> all) {
        ArrayNode texts = NODE.arrayNode();
        all.forEach(texts::add);
        return texts;
    }
}
