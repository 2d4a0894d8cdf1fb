package org.nextpull.window.compared;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Finding;
import org.nextpull.session.JoinedDay;

/**
 * What is compared, read.
 *
 * @param day all of it, one after the other
 * @param labels label of each source that was named with one
 * @param findings what is worth saying about the files
 */
record ComparedInput(JoinedDay day, Map<String, String> labels, List<Finding> findings) {
    ComparedInput {
        labels = Map.copyOf(labels);
        findings = List.copyOf(findings);
    }

    /** The same with more settings. */
    ComparedInput with(List<AskedSetting> more) {
        List<AskedSetting> settings = new ArrayList<>(day.input().settings());
        settings.addAll(more);
        return new ComparedInput(new JoinedDay(day.input().withSettings(settings), day.sources()), labels, findings);
    }
}
