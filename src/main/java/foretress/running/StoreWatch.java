package foretress.running;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/** Sees every statement on its way to the store: whatever is written or locked, nothing that was known before counts any more. */
@PersistenceUnitExtension
public class StoreWatch implements StatementInspector {
    private static final long serialVersionUID = 1;
    private static final Pattern WRITTEN =
        Pattern.compile("\\s*(?:insert into|update|delete from|merge into) +([a-z_]+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern LOCKED = Pattern.compile(" for (?:no key )?update", Pattern.CASE_INSENSITIVE);

    @Override
    public String inspect(String sql) {
        Matcher written = WRITTEN.matcher(sql);
        if (written.lookingAt()) {
            Asked.forget();
            Held.written(written.group(1).toLowerCase(Locale.ROOT));
        } else if (LOCKED.matcher(sql).find()) {
            Asked.forget();
        }
        return sql;
    }
}
