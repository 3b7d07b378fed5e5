package rushlight.web;

import java.util.List;
import rushlight.accounts.AuditLog;

/** What was done, the newest first. */
public record AuditAnswer(List<AuditLog.Entry> entries) {
    public AuditAnswer {
        entries = List.copyOf(entries);
    }
}
