package foretress.start;

import io.quarkus.runtime.configuration.AbstractConfigBuilder;
import io.smallrye.config.SmallRyeConfig;
import io.smallrye.config.SmallRyeConfigBuilder;

/** The settings as the server will see them: what was fixed in the build, files, environment, system properties. */
final class Built {
    /** Written by the framework's build. The framework reads it only once the server runs, which for us is too late. */
    private static final String SETTINGS = "io.quarkus.runtime.generated.RunTimeConfig";

    private Built() {}

    static SmallRyeConfig settings() throws StartRefused {
        try {
            var builder = new SmallRyeConfigBuilder();
            AbstractConfigBuilder.withCustomizer(builder, SETTINGS);
            return builder.build();
        } catch (RuntimeException e) {
            throw new StartRefused(StartRefused.Reason.SETTING, "A setting cannot be read: %s",
                String.valueOf(e.getMessage()).replaceAll("\\s+", " "));
        }
    }
}
