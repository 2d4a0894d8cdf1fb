package org.nextpull.cli;

import java.util.Optional;
import picocli.CommandLine;

/** The version of the jar, the commit that it was built from, and the Java that runs it. */
final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
        String build = Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                .orElse("built from sources");
        return new String[] {
            "nextpull " + build, "Java " + Runtime.version() + ", " + System.getProperty("java.vm.name")
        };
    }
}
