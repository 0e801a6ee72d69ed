package foretress.vault;

import io.quarkus.flyway.FlywayConfigurationCustomizer;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.ConfigProvider;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** Flyway looks for migrations in Java below db/migration alone; this one is handed to it. */
@Singleton
class CodingAtStart implements FlywayConfigurationCustomizer {
    @Override
    public void customize(FluentConfiguration configuration) {
        configuration.javaMigrations(
            new Coding(() -> ConfigProvider.getConfig().getValue("foretress.master-key", String.class)));
    }
}
