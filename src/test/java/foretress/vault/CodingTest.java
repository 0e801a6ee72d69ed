package foretress.vault;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.crypto.tink.Aead;
import com.google.crypto.tink.KeysetHandle;
import com.google.crypto.tink.RegistryConfiguration;
import com.google.crypto.tink.TinkProtoKeysetFormat;
import com.google.crypto.tink.subtle.AesGcmJce;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R61: a database filled by an older version is rewritten before the server answers")
class CodingTest {
    private static final String BEFORE = "20261129.2215";
    private static final String HASH = "ab".repeat(32);

    @Inject DataSource store;
    @Inject MasterKey master;
    @ConfigProperty(name = "foretress.master-key") String masterKey;

    private final String schema = "old_" + UUID.randomUUID().toString().replace("-", "");
    private final UUID client = UUID.randomUUID(), visit = UUID.randomUUID(), topic = UUID.randomUUID(),
        page = UUID.randomUUID(),
        task = UUID.randomUUID(), consent = UUID.randomUUID(), readBack = UUID.randomUUID(), first = UUID.randomUUID(),
        second = UUID.randomUUID(), signed = UUID.randomUUID(), newest = UUID.randomUUID();
    private String wrapped;

    private FluentConfiguration flyway() {
        return Flyway.configure(Thread.currentThread().getContextClassLoader()).dataSource(store).schemas(schema)
            .defaultSchema(schema)
            .locations("filesystem:src/main/resources/db/migration").javaMigrations(new Coding(() -> masterKey));
    }

    @BeforeEach
    void aDatabaseOfTheVersionBefore() throws Exception {
        flyway().target(BEFORE).load().migrate();
        wrapped = master.newWrappedKey(client).text();
        run("client", "id, given_name, family_name, search, birth_date_confirmed, language, created_at, version",
            "'%s', 'Ottilie', 'Brandt', '', false, 'en', '2026-01-01T00:00:00Z', 0", client);
        run("visit",
            "id, submission, client_id, stylist_id, wall_time, zone, starts_at, state, created_at, standing_code, owed_by, owed_what, version",
            "'%s', '%s', '%s', '%s', '2026-06-01T10:00:00', 'UTC', '2026-06-01T10:00:00Z', 'SIGNED', '2026-01-01T00:00:00Z', 'test first', '2026-05-29T10:00:00Z', 'skin-test', 0",
            visit, UUID.randomUUID(), client, UUID.randomUUID());
        run("client_key", "client_id, wrapped, made_at", "'%s', '%s', '2026-01-01T00:00:00Z'", client, wrapped);
        run("topic_answers", "id, visit_id, client_id, topic, version, language, saved_at, submission, asked, body",
            "'%s', '%s', '%s', 'home-colour', 1, 'en', '2026-01-01T00:00:00Z', '%s', 'henna darkening-lotion', '%s'",
            topic, visit, client, HASH,
            sealedBefore("topic_answers.body." + topic, "{\"henna\":\"yes\"}"));
        run("page_shown", "id, visit_id, page, first_at, last_at",
            "'%s', '%s', 'care', '2026-01-01T00:00:00Z', '2026-01-01T00:00:00Z'", page, visit);
        run("task", "id, visit_id, kind, open_as, due_at, made_at, version",
            "'%s', '%s', 'CALL', '%s CALL', '2026-01-02T00:00:00Z', '2026-01-01T00:00:00Z', 0", task, visit, visit);
        run("read_back", "id, visit_id, answers_sha256, confirmed_at", "'%s', '%s', '%s', '2026-01-01T00:10:00Z'",
            readBack, visit, HASH);
        assessment(first, "00:01");
        assessment(second, "00:02");
        assessment(signed, "00:11");
        assessment(newest, "00:30");
        run("signed_consent",
            "id, visit_id, client_id, version_no, submission, language, text_version, text_sha256, answers_sha256, pdf_sha256, rule_set, "
                + "mark_kind, signed_at, file_name, body, evidence, pdf",
            "'%s', '%s', '%s', 1, '%s', 'en', '1', '%s', '%s', '%s', 'r', 'typed', '2026-01-01T00:11:00Z', 'f', 'x', 'x', 'x'",
            consent, visit, client, UUID.randomUUID(), HASH, HASH, HASH);
        flyway().load().migrate();
    }

    private void assessment(UUID id, String at) throws Exception {
        run("assessment", "id, visit_id, client_id, assessed_at, rule_set_sha256, answers_sha256, standing, body",
            "'%s', '%s', '%s', '2026-01-01T%s:00Z', 'r', '%s', 'test first', '%s'", id, visit, client, at, HASH,
            sealedBefore("assessment.body." + id, "{}"));
    }

    /** As versions before this one sealed: not filled up, nothing in front. */
    private String sealedBefore(String place, String plain) throws Exception {
        KeysetHandle key = TinkProtoKeysetFormat.parseEncryptedKeyset(Base64.getDecoder().decode(wrapped),
            new AesGcmJce(Base64.getDecoder().decode(masterKey)), ("client_key.wrapped." + client).getBytes(UTF_8));
        return Base64.getEncoder().encodeToString(key.getPrimitive(RegistryConfiguration.get(), Aead.class)
            .encrypt(plain.getBytes(UTF_8), place.getBytes(UTF_8)));
    }

    private void run(String table, String columns, String values, Object... with) throws SQLException {
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute(
                "insert into \"%s\".%s (%s) values (%s)".formatted(schema, table, columns, values.formatted(with)));
        }
    }

    private List<List<String>> rows(String sql) throws SQLException {
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            ResultSet found = statement.executeQuery(sql.replace("#", "\"" + schema + "\"."));
            var rows = new ArrayList<List<String>>();
            while (found.next()) {
                var row = new ArrayList<String>();
                for (int i = 1; i <= found.getMetaData().getColumnCount(); i++) {
                    row.add(String.valueOf(found.getString(i)));
                }
                rows.add(row);
            }
            return rows;
        }
    }

    private DataKey key() throws Exception {
        return master.unwrap(client, wrapped);
    }

    private String open(String place, String sealed) throws Exception {
        return new String(key().open(place, sealed), UTF_8);
    }

    private String code(String column, String plain) throws Exception {
        return key().code(column, plain.getBytes(UTF_8));
    }

    @Test
    void hashesBecomeCodesThatOnlyTheKeyCanMake() throws Exception {
        assertThat(rows("select answers_code from #read_back"))
            .containsExactly(List.of(code("read_back.answers_code", HASH)));
        assertThat(rows("select text_code, answers_code, pdf_code from #signed_consent")).containsExactly(List.of(
            code("signed_consent.text_code", HASH), code("signed_consent.answers_code", HASH),
            code("signed_consent.pdf_code", HASH)));
        assertThat(rows("select topic, submission from #topic_answers")).containsExactly(List.of(
            code("topic_answers.topic", "home-colour"), code("topic_answers.submission", HASH)));
    }

    @Test
    void whatStoodInClearIsSealedAndStillReadable() throws Exception {
        assertThat(open("visit.told." + visit, rows("select told from #visit").get(0).get(0)))
            .isEqualTo("test first\nskin-test\n2026-05-29T10:00:00Z");
        assertThat(open("task.kind." + task, rows("select kind from #task").get(0).get(0))).isEqualTo("CALL");
        assertThat(rows("select open_as from #task")).containsExactly(List.of(code("task.open_as", visit + " CALL")));
        List<String> shown = rows("select page, name from #page_shown").get(0);
        assertThat(shown.get(0)).isEqualTo(code("page_shown.page", "care"));
        assertThat(open("page_shown.name." + page, shown.get(1))).isEqualTo("care");
        assertThat(open("topic_answers.asked." + topic, rows("select asked from #topic_answers").get(0).get(0)))
            .isEqualTo("henna darkening-lotion");
    }

    @Test
    void theServerItselfRunsItBetweenItsTwoNeighbours() throws Exception {
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            ResultSet run = statement.executeQuery(
                "select \"version\" from \"flyway_schema_history\" where \"version\" like '20261129.224_' order by \"installed_rank\"");
            var versions = new ArrayList<String>();
            while (run.next()) {
                versions.add(run.getString(1));
            }
            assertThat(versions).containsExactly("20261129.2240", "20261129.2241", "20261129.2242");
        }
    }

    @Test
    void sealedTextsAreFilledUpAndSayTheSame() throws Exception {
        String body = rows("select body from #topic_answers").get(0).get(0);
        assertThat(open("topic_answers.body." + topic, body)).isEqualTo("{\"henna\":\"yes\"}");
        assertThat(body.length()).isGreaterThan(2048);
    }

    @Test
    void whatDoesNotOpenStaysAsItIs() throws Exception {
        assertThat(rows("select body, evidence, pdf from #signed_consent")).containsExactly(List.of("x", "x", "x"));
    }

    @Test
    void ofTheAssessmentsTheSignedAndTheNewestStay() throws Exception {
        assertThat(rows("select id from #assessment order by assessed_at")).containsExactly(List.of(signed.toString()),
            List.of(newest.toString()));
    }

    @Test
    void theSameWordsHaveOtherCodesForAnotherClientAndColumn() throws Exception {
        UUID other = UUID.randomUUID();
        assertThat(master.unwrap(other, master.newWrappedKey(other).text()).code("task.open_as", HASH.getBytes(UTF_8)))
            .isNotEqualTo(code("task.open_as", HASH));
        assertThat(code("read_back.answers_code", HASH)).isNotEqualTo(code("assessment.answers_code", HASH))
            .isNotEqualTo(HexFormat.of().formatHex(HASH.getBytes(UTF_8)));
    }
}
